// SPDX-License-Identifier: MIT
#include "analysis/resample.hpp"

#include "analysis/fft.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::analysis {

Resampler::Resampler(std::span<float const> samples, Frequency rate)
    : samples_(samples), rate_(rate),
      length_(fast_length(samples.size() + static_cast<std::size_t>(0.01 * in_hertz(rate)))) {
} // the ends must not meet

Resampled Resampler::at(Frequency rate) const {
    if (rate == rate_) return {{samples_.begin(), samples_.end()}, rate};
    auto& fft = long_fft();
    if (bins_.empty()) {
        std::vector<double> padded(length_, 0.0);
        std::copy(samples_.begin(), samples_.end(), padded.begin());
        bins_ = fft.forward(padded);
    }
    double const ratio = in_hertz(rate) / in_hertz(rate_);
    auto const new_length =
        fast_length(static_cast<std::size_t>(std::lround(static_cast<double>(length_) * ratio)));
    auto const kept = std::min(bins_.size(), new_length / 2 + 1);
    auto bins = std::vector(bins_.begin(), bins_.begin() + static_cast<std::ptrdiff_t>(kept));
    bins.resize(new_length / 2 + 1, 0.0);
    if (kept == new_length / 2 + 1) bins.back() = bins.back().real();
    double const true_ratio = static_cast<double>(new_length) / static_cast<double>(length_);
    auto const& all = fft.inverse(bins, new_length);
    auto const wanted = static_cast<std::size_t>(static_cast<double>(samples_.size()) * true_ratio);
    Resampled made{{all.begin(), all.begin() + static_cast<std::ptrdiff_t>(std::min(wanted, new_length))},
                   rate_ * true_ratio};
    for (auto& x : made.samples) x *= true_ratio;
    return made;
}

} // namespace vowelway::analysis
