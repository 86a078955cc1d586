// SPDX-License-Identifier: MIT
// Autocorrelations of many spectra in one band: the cosines are worked out once. Private to the analysis
// layer.
#pragma once

#include "vowelway/analysis/spectrum.hpp"

#include <Eigen/Dense>

#include <vector>

namespace vowelway::analysis {

/// What band_autocorrelation computes, for spectra of the same bins.
class BandLags {
  public:
    BandLags(PowerSpectrum const& like, Frequency ceiling, int lags);

    Eigen::Index last() const { return cosines_.rows() - 1; } ///< the bin at which the band ends
    /// The bins 0..last of a spectrum.
    Eigen::ArrayXd band(PowerSpectrum const& s) const;
    /// Lags of each column of bins 0..last.
    Eigen::MatrixXd of(Eigen::MatrixXd bins) const;
    /// Lags of each of these spectra, together: one product of matrices.
    std::vector<std::vector<double>> of_each(PowerSpectrum const& first,
                                             std::vector<PowerSpectrum> const& others) const;
    /// Of a filter with these autocorrelations at the lags (twice but at lag 0): its power in each bin.
    Eigen::ArrayXd power(Eigen::VectorXd const& of_filter) const { return (cosines_ * of_filter).array(); }

  private:
    Eigen::MatrixXd cosines_; ///< cos(m k pi / last): bins by lags
};

} // namespace vowelway::analysis
