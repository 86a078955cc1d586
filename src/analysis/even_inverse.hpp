// SPDX-License-Identifier: MIT
// From a power spectrum to the autocorrelation. Private to the analysis layer.
#pragma once

#include "analysis/fft.hpp"

#include <cmath>
#include <numbers>

namespace vowelway::analysis {

/// The inverse transform of real bins 0..m (m even) of a sequence of 2 m samples: samples 0..m, which the
/// others mirror. It takes one transform of m real samples (W. H. Press, S. A. Teukolsky, W. T. Vetterling &
/// B. P. Flannery, Numerical Recipes, 3rd ed. 2007, section 12.4.2).
class EvenInverse {
  public:
    explicit EvenInverse(std::size_t m) : folded_(m), samples_(m + 1) {
        for (std::size_t k = 0; k < m; ++k) {
            double const angle = std::numbers::pi * static_cast<double>(k) / static_cast<double>(m);
            sines_.push_back(std::sin(angle));
            cosines_.push_back(std::cos(angle));
        }
    }

    std::vector<double> const& of(std::vector<double> const& bins) {
        auto const m = folded_.size();
        double odd =
            0.5 * (bins[0] - bins[m]); // the sample at hand of odd number: each follows from the last
        folded_[0] = 0.5 * (bins[0] + bins[m]);
        for (std::size_t k = 1; k < m; ++k) {
            folded_[k] = 0.5 * (bins[k] + bins[m - k]) - sines_[k] * (bins[k] - bins[m - k]);
            odd += cosines_[k] * bins[k];
        }
        auto const& half = frame_fft().forward(folded_);
        double const scale = 1 / static_cast<double>(m);
        for (std::size_t n = 0; n < m / 2; ++n) {
            if (n > 0) odd -= half[n].imag();
            samples_[2 * n] = scale * half[n].real();
            samples_[2 * n + 1] = scale * odd;
        }
        samples_[m] = scale * half[m / 2].real();
        return samples_;
    }

  private:
    std::vector<double> sines_, cosines_, folded_, samples_;
};

} // namespace vowelway::analysis
