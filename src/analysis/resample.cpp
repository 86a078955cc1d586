// SPDX-License-Identifier: MIT
#include "analysis/resample.hpp"

#include "analysis/fft.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway {

Resampled resample(std::span<float const> samples, Frequency from, Frequency rate) {
    if (from == rate) return {{samples.begin(), samples.end()}, rate};
    auto const pad = static_cast<std::size_t>(0.01 * in_hertz(from)); // so that the ends do not meet
    auto const length = fast_length(samples.size() + pad);
    std::vector<double> padded(length, 0.0);
    std::copy(samples.begin(), samples.end(), padded.begin());
    RealFft fft;
    auto bins = fft.forward(padded);
    double const ratio = in_hertz(rate) / in_hertz(from);
    auto const new_length = fast_length(static_cast<std::size_t>(std::lround(static_cast<double>(length) * ratio)));
    auto const kept = std::min(bins.size(), new_length / 2 + 1);
    bins.resize(kept);
    bins.resize(new_length / 2 + 1, 0.0);
    if (kept == new_length / 2 + 1) bins.back() = bins.back().real();
    double const true_ratio = static_cast<double>(new_length) / static_cast<double>(length);
    Resampled made{{}, from * true_ratio};
    auto const& all = fft.inverse(bins, new_length);
    auto const wanted = static_cast<std::size_t>(static_cast<double>(samples.size()) * true_ratio);
    made.samples.assign(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(std::min(wanted, new_length)));
    for (auto& x : made.samples) x *= true_ratio;
    return made;
}

} // namespace vowelway
