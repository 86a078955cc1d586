// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/scales.hpp"

namespace vowelway::acoustics {

Decibels a_weighting(Frequency f) {
    // Pole frequencies of IEC 61672-1; the last term makes the weight 0 dB at 1 kHz.
    constexpr double f1 = 20.598997, f2 = 107.65265, f3 = 737.86223, f4 = 12194.217;
    auto const response = [&](double hz) {
        double const s = hz * hz;
        return f4 * f4 * s * s / ((s + f1 * f1) * std::sqrt((s + f2 * f2) * (s + f3 * f3)) * (s + f4 * f4));
    };
    return {20 * std::log10(response(f.value()) / response(1000))};
}

} // namespace vowelway::acoustics
