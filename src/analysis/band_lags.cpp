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

std::vector<std::vector<double>> BandLags::of_each(PowerSpectrum const& first,
                                                   std::vector<PowerSpectrum> const& others) const {
    Eigen::MatrixXd bins(last() + 1, static_cast<Eigen::Index>(others.size()) + 1);
    bins.col(0) = band(first).matrix();
    for (std::size_t i = 0; i < others.size(); ++i)
        bins.col(static_cast<Eigen::Index>(i) + 1) = band(others[i]).matrix();
    Eigen::MatrixXd const r = of(std::move(bins));
    std::vector<std::vector<double>> all;
    for (auto const& column : r.colwise()) all.emplace_back(column.begin(), column.end());
    return all;
}

} // namespace vowelway::analysis
