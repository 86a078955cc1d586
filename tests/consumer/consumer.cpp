// SPDX-License-Identifier: MIT
// Uses the installed library as a stranger would: the turning point of one vowel.
#include <vowelway/plan/crossings.hpp>

#include <iostream>

int main() {
    using namespace vowelway;
    Resonance const r1{hertz(700), hertz(35), false, std::nullopt};
    auto const turn = plan::crossing({2}, {1}, r1);
    std::cout << turn.str() << " at " << Tuning{}.name(turn.pitch).str() << "\n";
}
