// SPDX-License-Identifier: MIT
// A filter of finite length. Private to the analysis layer.
#pragma once

#include <Eigen/Core>

#include <span>

namespace vowelway::analysis {

/// y[n] = sum over k of taps[k] x[n + k], for every n of y; x has taps.size() - 1 samples more than y. Eight
/// sums at a time stay in the processor's registers.
inline void filter(std::span<double const> x, std::span<double const> taps, std::span<double> y) {
    using Eight = Eigen::Array<double, 8, 1>;
    std::size_t n = 0;
    for (; n + 8 <= y.size(); n += 8) {
        Eight sum = Eight::Zero();
        for (std::size_t k = 0; k < taps.size(); ++k) sum += taps[k] * Eigen::Map<Eight const>(&x[n + k]);
        Eigen::Map<Eight> out(&y[n]);
        out = sum;
    }
    for (; n < y.size(); ++n) {
        double sum = 0;
        for (std::size_t k = 0; k < taps.size(); ++k) sum += taps[k] * x[n + k];
        y[n] = sum;
    }
}

/// The same with taps that mirror about the middle one, `half[0]`, and are half[k] at k from it on both
/// sides: x has 2 half.size() - 2 samples more than y.
inline void filter_even(std::span<double const> x, std::span<double const> half, std::span<double> y) {
    using Eight = Eigen::Array<double, 8, 1>;
    using At = Eigen::Map<Eight const>;
    auto const middle = half.size() - 1;
    std::size_t n = 0;
    for (; n + 8 <= y.size(); n += 8) {
        double const* const here = &x[n + middle];
        Eight sum = half[0] * At(here);
        for (std::size_t k = 1; k <= middle; ++k) sum += half[k] * (At(here - k) + At(here + k));
        Eigen::Map<Eight> out(&y[n]);
        out = sum;
    }
    for (; n < y.size(); ++n) {
        y[n] = half[0] * x[n + middle];
        for (std::size_t k = 1; k <= middle; ++k) y[n] += half[k] * (x[n + middle - k] + x[n + middle + k]);
    }
}

} // namespace vowelway::analysis
