// SPDX-License-Identifier: MIT
// How strong a sine is in a stream, told apart from its neighbours by a window with low sides.
#pragma once

#include "vowelway/sound/programme.hpp"

#include <cmath>
#include <complex>
#include <numbers>
#include <vector>

namespace vowelway::sound::test {

inline std::vector<double> samples_of(Part& part, double length) {
    std::vector<double> out(static_cast<std::size_t>(length * in_hertz(sample_rate)), 0.0);
    part.add(out);
    return out;
}

/// Level (dB, rms, re 1) of the sine at `hz` in samples [from, to): the sum over a Blackman-Harris window (F.
/// J. Harris, Proc. IEEE 66, 1978, 51: sides 92 dB down from four bins on).
inline double level_at(std::vector<double> const& x, double hz, std::size_t from, std::size_t to) {
    double const n = static_cast<double>(to - from), pi = std::numbers::pi;
    std::complex<double> sum = 0;
    double weight = 0;
    for (std::size_t i = from; i < to; ++i) {
        double const t = static_cast<double>(i - from) / n;
        double const w = 0.35875 - 0.48829 * std::cos(2 * pi * t) + 0.14128 * std::cos(4 * pi * t) -
                         0.01168 * std::cos(6 * pi * t);
        sum += w * x[i] * std::polar(1.0, -2 * pi * hz * static_cast<double>(i) / in_hertz(sample_rate));
        weight += w;
    }
    return 20 * std::log10(2 * std::abs(sum) / weight / std::numbers::sqrt2);
}

} // namespace vowelway::sound::test
