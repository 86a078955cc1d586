// SPDX-License-Identifier: MIT
// From a power spectrum to the autocorrelation. Private to the analysis layer.
#pragma once

#include "analysis/fft.hpp"

#include <Eigen/Core>

#include <map>
#include <numbers>

namespace vowelway::analysis {

/// The inverse transform of real bins 0..m (m even) of a sequence of 2 m samples: samples 0..m, which the
/// others mirror. It takes one transform of m real samples (W. H. Press, S. A. Teukolsky, W. T. Vetterling &
/// B. P. Flannery, Numerical Recipes, 3rd ed. 2007, section 12.4.2).
class EvenInverse {
  public:
    explicit EvenInverse(std::size_t m) : folded_(m), samples_(m + 1) {
        auto const count = static_cast<double>(m);
        Eigen::ArrayXd const angles = Eigen::ArrayXd::LinSpaced(static_cast<Eigen::Index>(m), 0, count - 1) *
                                      (std::numbers::pi / count);
        sines_ = angles.sin();
        cosines_ = angles.cos();
    }

    std::vector<double> const& of(std::vector<double> const& bins) {
        auto const m = folded_.size();
        auto const inside = static_cast<Eigen::Index>(m) - 1;
        Eigen::Map<Eigen::ArrayXd const> const up(bins.data() + 1, inside);
        auto const down = up.reverse();
        folded_[0] = 0.5 * (bins[0] + bins[m]);
        Eigen::Map<Eigen::ArrayXd>(folded_.data() + 1, inside) =
            0.5 * (up + down) - sines_.tail(inside) * (up - down);
        double odd = 0.5 * (bins[0] - bins[m]) +
                     (cosines_.tail(inside) * up).sum(); // sample 1; the next follow from it
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
    std::vector<double> folded_, samples_;
    Eigen::ArrayXd sines_, cosines_; ///< of pi k / m, k from 0 to m - 1
};

/// One for each thread and length; the last few are kept.
inline EvenInverse& even_inverse(std::size_t m) {
    constexpr std::size_t most_kept = 8;
    thread_local std::map<std::size_t, EvenInverse> known;
    if (known.size() >= most_kept && !known.contains(m)) known.clear();
    return known.try_emplace(m, m).first->second;
}

} // namespace vowelway::analysis
