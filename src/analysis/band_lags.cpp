// SPDX-License-Identifier: MIT
#include "analysis/band_lags.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace vowelway::analysis {

BandLags::BandLags(PowerSpectrum const& like, Frequency ceiling, int lags) {
    auto const last = static_cast<Eigen::Index>(
        std::min(static_cast<std::size_t>(std::lround(ceiling / like.bin)), like.power.size() - 1));
    cosines_.resize(last + 1, lags + 1);
    cosines_.col(0).setOnes();
    Eigen::ArrayXd const step = Eigen::ArrayXd::NullaryExpr(last + 1, [&](Eigen::Index k) {
        return std::cos(std::numbers::pi * static_cast<double>(k) / static_cast<double>(last));
    });
    if (lags > 0) cosines_.col(1) = step.matrix();
    for (Eigen::Index m = 2; m <= lags; ++m) // cos(m x) by the three-term recursion
        cosines_.col(m) = (2 * step * cosines_.col(m - 1).array() - cosines_.col(m - 2).array()).matrix();
}

Eigen::ArrayXd BandLags::band(PowerSpectrum const& s) const {
    return Eigen::Map<Eigen::ArrayXd const>(s.power.data(), last() + 1);
}

Eigen::MatrixXd BandLags::of(Eigen::MatrixXd bins) const {
    bins /= static_cast<double>(last());
    bins.row(0) *= 0.5, bins.row(last()) *= 0.5;
    return cosines_.transpose() * bins;
}

std::vector<double> BandLags::of(PowerSpectrum const& s) const {
    Eigen::VectorXd const r = of(Eigen::MatrixXd(band(s)));
    return {r.begin(), r.end()};
}

} // namespace vowelway::analysis
