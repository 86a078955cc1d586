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
    // Both go round by a product a sample: after a million of them they are right to 1e-10.
    double const step = -2 * pi * hz / in_hertz(sample_rate);
    auto now = std::polar(1.0, step * static_cast<double>(from)), round = std::complex<double>(1);
    auto const turn = std::polar(1.0, step), more = std::polar(1.0, 2 * pi / n);
    for (std::size_t i = from; i < to; ++i) {
        double const c = round.real();
        double const w = 0.35875 - 0.48829 * c + 0.14128 * (2 * c * c - 1) -
                         0.01168 * (4 * c * c - 3) * c; // of once, twice, thrice the angle
        sum += w * x[i] * now;
        weight += w;
        now *= turn;
        round *= more;
    }
    return 20 * std::log10(2 * std::abs(sum) / weight / std::numbers::sqrt2);
}

} // namespace vowelway::sound::test
