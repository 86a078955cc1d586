// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/source.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace vowelway::acoustics {

Decibels Source::slope_at(Pitch fo, Decibels loudness) const {
    double const octaves = std::log2(upper_complete.value() / upper_begins.value());
    double const above = std::log2(fo.frequency().value() / upper_begins.value());
    double const share = octaves > 0 ? std::clamp(above / octaves, 0.0, 1.0) : above >= 0 ? 1.0 : 0.0;
    Decibels const steady = slope + (upper_slope - slope) * share;
    return std::min(steady + slope_per_loudness * loudness.value, Decibels{-1});
}

Decibels Source::flow_level(Frequency f, Pitch fo, Decibels loudness) const {
    // 20 log10(2) dB an octave for each power of f.
    double const power = -slope_at(fo, loudness).value / (20 * std::log10(2.0));
    auto const shape = [&](Frequency g) { return -20 * std::log10(1 + std::pow(g.value() / 100, power)); };
    // Louder: the whole spectrum rises by `loudness` around 500 Hz, where the first resonance makes the
    // level; the change of slope turns about that frequency.
    double const turn = slope_per_loudness.value * loudness.value * std::log2(fo.frequency().value() / 500);
    return {shape(f) - shape(fo.frequency()) + loudness.value + turn};
}

Decibels radiated_level(Frequency f) {
    constexpr double rho = 1.14, flow = 100e-6, distance = 1, reference = 20e-6;
    return {20 * std::log10(rho * f.value() * flow / (2 * distance) / reference)};
}

Decibels higher_pole_correction(int known, Frequency f, Frequency quarter_wave) {
    constexpr double square[] = {1.06, 0.72, 0.54}, fourth[] = {0.0102, 0.0033, 0.00143};
    if (known < 2 || known > 4)
        throw std::invalid_argument("higher_pole_correction: 2, 3 or 4 known resonances");
    // Held gradually: a corner there would be seen as a resonance.
    double const raw = f.value() / quarter_wave.value(), most = 2.0 * known, ease = 0.5 * known;
    double const x = raw <= most ? raw : most + ease * (1 - std::exp((most - raw) / ease));
    return {square[known - 2] * x * x + fourth[known - 2] * x * x * x * x};
}

} // namespace vowelway::acoustics
