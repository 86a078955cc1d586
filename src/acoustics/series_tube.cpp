// SPDX-License-Identifier: MIT
#include "acoustics/series_tube.hpp"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace vowelway::acoustics::tube {

namespace {

// cos(m pi x/L) in the middle of each section.
std::array<Series, series_sections> const& basis() {
    static auto const table = [] {
        std::array<Series, series_sections> out{};
        for (int i = 0; i < series_sections; ++i)
            for (int m = 0; m < series_terms; ++m)
                out[i][m] = std::cos((m + 1) * std::numbers::pi * (i + 0.5) / series_sections);
        return out;
    }();
    return table;
}

// Mean of ln A and spreads of the terms over sixteen published area functions: Story, Titze & Hoffman 1996,
// Table III, and Fant 1960, the two tables weighing the same (tests/data/acoustics). The first and third
// terms differ most between vowels.
constexpr double mean_log_area = 0.76;
constexpr Series spread_series{0.71, 0.27, 0.71, 0.43, 0.20, 0.23, 0.08, 0.12};

// Poles of a tube near those of a slightly different one; empty if one is lost or two have run together.
std::vector<Complex> follow(Tube const& t, std::vector<Complex> const& guesses) {
    std::vector<Complex> out;
    for (auto guess : guesses) {
        auto const pole = find_pole(t, guess);
        double const f = pole ? frequency_of(*pole) : 0;
        if (f < 60 || (!out.empty() && f < frequency_of(out.back()) + 1)) return {};
        out.push_back(*pole);
    }
    return out;
}

} // namespace

double mean_area(double length) { return std::exp(mean_log_area) * (length / 17) * (length / 17); }

Tube series_tube(Series const& series, double length, TractLoss loss) {
    Tube t{std::vector<double>(series_sections, length / series_sections),
           std::vector<double>(series_sections), loss};
    double const mean = mean_area(length);
    for (int i = 0; i < series_sections; ++i) {
        double sum = 0;
        for (int m = 0; m < series_terms; ++m) sum += series[m] * basis()[i][m];
        t.area[i] = mean * std::exp(sum);
    }
    return t;
}

namespace {

constexpr int unknowns = series_terms + 1; // the last is ln(length)
using Unknowns = Eigen::Matrix<double, unknowns, 1>;
using Jacobian = Eigen::Matrix<double, 3, unknowns>;

Eigen::Vector3d misses(std::vector<double> const& targets, std::vector<Complex> const& poles) {
    Eigen::Vector3d out = Eigen::Vector3d::Zero();
    for (std::size_t k = 0; k < targets.size(); ++k) out[k] = std::log(targets[k] / frequency_of(poles[k]));
    return out;
}

// How freely each unknown moves: as it does between the vowels of real tracts.
Unknowns spread_of(double length_sd) {
    Unknowns spread;
    for (int m = 0; m < series_terms; ++m) spread[m] = spread_series[m] * spread_series[m];
    spread[series_terms] = length_sd * length_sd;
    return spread;
}

Jacobian jacobian_of(SeriesSolution const& now, int count) {
    Jacobian out = Jacobian::Zero();
    std::vector<double> slopes;
    for (int k = 0; k < count; ++k) {
        sensitivities(now.tube, now.poles[k], slopes, nullptr);
        for (int i = 0; i < series_sections; ++i)
            for (int m = 0; m < series_terms; ++m) out(k, m) += slopes[i] * basis()[i][m];
        out(k, series_terms) = -1;
    }
    return out;
}

// The likeliest of the steps after which the linearised resonances are right.
Unknowns likeliest_step(Jacobian const& jacobian, Unknowns const& spread, Eigen::Vector3d const& miss,
                        int count) {
    constexpr double longest_step = 0.4;
    Eigen::Matrix3d normal = jacobian * spread.asDiagonal() * jacobian.transpose();
    for (int k = 0; k < 3; ++k) normal(k, k) += k < count ? 1e-9 : 1;
    Unknowns step = spread.asDiagonal() * (jacobian.transpose() * normal.ldlt().solve(miss));
    if (double const size = step.cwiseAbs().maxCoeff(); size > longest_step) step *= longest_step / size;
    return step;
}

// Takes the step, or the half, the quarter .. of it that comes nearer to the targets; false when none does.
bool take(SeriesSolution& now, Eigen::Vector3d& miss, Unknowns step, Jacobian const& jacobian,
          std::vector<double> const& targets) {
    for (int halving = 0; halving < 6; ++halving, step *= 0.5) {
        auto series = now.series;
        for (int m = 0; m < series_terms; ++m) series[m] += step[m];
        double const length = now.length * std::exp(step[series_terms]);
        auto t = series_tube(series, length, now.tube.loss);
        Eigen::Vector3d const shift = jacobian * step;
        auto guesses = now.poles;
        for (std::size_t k = 0; k < targets.size(); ++k)
            guesses[k] = Complex(guesses[k].real(), guesses[k].imag() * std::exp(shift[k]));
        auto poles = follow(t, guesses);
        if (poles.empty()) continue;
        auto const left = misses(targets, poles);
        if (left.norm() > 0.999 * miss.norm()) continue;
        now.series = series;
        now.length = length;
        now.tube = std::move(t);
        now.poles = std::move(poles);
        miss = left;
        now.residual = left.cwiseAbs().maxCoeff();
        return true;
    }
    return false;
}

} // namespace

SeriesSolution solve_series(std::vector<double> const& targets, Series const& start, double length,
                            double length_sd, TractLoss loss) {
    constexpr double accuracy = 1e-4;
    constexpr int most_steps = 40;
    auto const count = static_cast<int>(targets.size());
    SeriesSolution now;
    now.series = start;
    now.length = length;
    now.tube = series_tube(now.series, length, loss);
    now.poles = first_poles(now.tube, count);
    if (now.poles.size() < targets.size()) return now;
    auto miss = misses(targets, now.poles);
    now.residual = miss.cwiseAbs().maxCoeff();
    auto const spread = spread_of(length_sd);
    while (now.residual > accuracy && now.steps < most_steps) {
        ++now.steps;
        auto const jacobian = jacobian_of(now, count);
        auto const step = likeliest_step(jacobian, spread, miss, count);
        if (!step.allFinite() || !take(now, miss, step, jacobian, targets)) break;
    }
    return now;
}

} // namespace vowelway::acoustics::tube
