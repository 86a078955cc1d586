// SPDX-License-Identifier: MIT
// Uses the installed library as a stranger would: the turning point of one vowel, the spectrum of one tone.
#include <vowelway/analysis/spectrum.hpp>
#include <vowelway/plan/crossings.hpp>

#include <cmath>
#include <iostream>
#include <numbers>

int main() {
    using namespace vowelway;
    Resonance const r1{hertz(700), hertz(35), false, std::nullopt};
    auto const turn = plan::crossing({2}, {1}, r1);
    std::cout << turn.str() << " at " << Tuning{}.name(turn.pitch).str() << "\n";

    std::vector<float> tone(8000);
    for (std::size_t n = 0; n < tone.size(); ++n)
        tone[n] = std::sin(2 * std::numbers::pi_v<float> * 440 * static_cast<float>(n) / 16000);
    auto const spectrum = analysis::average_spectrum(tone, hertz(16000));
    bool const peak = spectrum.mean(hertz(420), hertz(460)) > 1000 * spectrum.mean(hertz(2000), hertz(4000));
    std::cout << "a tone of 440 Hz " << (peak ? "shows" : "does not show") << "\n";
}
