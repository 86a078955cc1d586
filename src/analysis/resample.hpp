// SPDX-License-Identifier: MIT
// A short sound at other rates, exactly band-limited. Private to the analysis layer.
#pragma once

#include "vowelway/core/units.hpp"

#include <complex>
#include <span>
#include <vector>

namespace vowelway::analysis {

struct Resampled {
    std::vector<double> samples;
    Frequency rate; ///< as near to the one asked for as the lengths of the transforms allow (0.5 %)
};

/// By the Fourier transform: what lies above half the new rate is cut off. One transform serves all rates.
class Resampler {
  public:
    Resampler(std::span<float const> samples, Frequency rate);
    /// `rate` may be higher or lower than the sound's own.
    Resampled at(Frequency rate) const;

  private:
    std::span<float const> samples_;
    Frequency rate_;
    std::size_t length_;                             // padded
    mutable std::vector<std::complex<double>> bins_; // made at the first other rate
};

inline Resampled resample(std::span<float const> samples, Frequency from, Frequency rate) {
    return Resampler(samples, from).at(rate);
}

} // namespace vowelway::analysis
