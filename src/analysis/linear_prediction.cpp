// SPDX-License-Identifier: MIT
#include "vowelway/analysis/linear_prediction.hpp"

#include "analysis/roots.hpp"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>

namespace vowelway::analysis {
namespace {

using Complex = std::complex<double>;
using RowMatrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;
constexpr double pi = std::numbers::pi;
constexpr double ridge = 1e-9; // of the trace: keeps digital silence and pure tones solvable

Pole pole_at(Complex z, Frequency rate) {
    return {rate * (std::arg(z) / (2 * pi)), rate * (-0.5 * std::log(std::norm(z)) / pi)};
}
Complex root_of(Pole const& pole, Frequency rate) {
    double const angle = 2 * pi * in_hertz(pole.centre) / in_hertz(rate);
    return std::polar(std::exp(-pi * in_hertz(pole.bandwidth) / in_hertz(rate)), angle);
}

} // namespace

std::vector<double> band_autocorrelation(PowerSpectrum const& spectrum, Frequency ceiling, int lags) {
    auto const last =
        std::min(static_cast<std::size_t>(std::lround(ceiling / spectrum.bin)), spectrum.power.size() - 1);
    std::vector<double> r(static_cast<std::size_t>(lags) + 1, 0.0);
    for (std::size_t k = 0; k <= last; ++k) {
        double const share =
            (k == 0 || k == last ? 0.5 : 1.0) * spectrum.power[k] / static_cast<double>(last);
        double const step = std::cos(pi * static_cast<double>(k) / static_cast<double>(last));
        double before = step, now = 1; // cos(m x) by the three-term recursion
        for (auto& lag : r) {
            lag += share * now;
            double const next = 2 * step * now - before;
            before = now;
            now = next;
        }
    }
    return r;
}

Predictor predict(std::span<double const> r, int order, Frequency rate) {
    Predictor found{{1.0}, r[0], rate};
    auto& a = found.a;
    a.reserve(static_cast<std::size_t>(order) + 1);
    for (int i = 1; i <= order && found.error > 1e-14 * r[0]; ++i) {
        double sum = 0;
        for (int j = 0; j < i; ++j)
            sum += a[static_cast<std::size_t>(j)] * r[static_cast<std::size_t>(i - j)];
        double const reflection = -sum / found.error;
        a.push_back(0);
        for (std::size_t j = 0, k = a.size() - 1; j <= k; ++j, --k) { // each with its mirror image
            double const first = a[j], last = a[k];
            a[j] = first + reflection * last;
            a[k] = last + reflection * first;
        }
        found.error *= 1 - reflection * reflection;
    }
    return found;
}

WeightedMoments::WeightedMoments(int order)
    : order_(order), moments_(static_cast<std::size_t>((order + 1) * (order + 1)), 0.0) {}

void WeightedMoments::add(std::span<double const> x, std::span<double const> weights) {
    auto const p = static_cast<std::size_t>(order_);
    std::vector<std::size_t> counted; // the samples that have a weight
    counted.reserve(x.size());
    for (std::size_t n = p; n < x.size(); ++n)
        if (weights[n] > 0) counted.push_back(n);
    Eigen::MatrixXd history(order_ + 1, static_cast<Eigen::Index>(counted.size())); // each below its past
    for (Eigen::Index column = 0; auto const n : counted)
        history.col(column++) =
            std::sqrt(weights[n]) * Eigen::Map<Eigen::VectorXd const>(&x[n - p], order_ + 1);
    Eigen::MatrixXd lower = Eigen::MatrixXd::Zero(order_ + 1, order_ + 1);
    lower.selfadjointView<Eigen::Lower>().rankUpdate(history);
    Eigen::Map<RowMatrix>(moments_.data(), order_ + 1, order_ + 1) +=
        lower.selfadjointView<Eigen::Lower>().toDenseMatrix().reverse(); // a sample first, then its past
}

WeightedMoments& WeightedMoments::operator+=(WeightedMoments const& other) {
    for (std::size_t k = 0; k < moments_.size(); ++k) moments_[k] += other.moments_[k];
    return *this;
}

Predictor WeightedMoments::predict(int order, Frequency rate) const {
    Eigen::Map<RowMatrix const> const all(moments_.data(), order_ + 1, order_ + 1);
    Eigen::MatrixXd normal = all.block(1, 1, order, order);
    normal.diagonal().array() += ridge * normal.trace() / order + 1e-300;
    Eigen::VectorXd const right = all.block(1, 0, order, 1);
    Eigen::VectorXd const solved = normal.ldlt().solve(right);
    Predictor found{{1.0}, 0, rate};
    for (double c : solved) found.a.push_back(-c);
    found.error = std::max(0.0, all(0, 0) - solved.dot(right));
    return found;
}

std::vector<Pole> poles(Predictor const& predictor) {
    std::vector<Pole> found;
    for (auto const& z : upper_roots(predictor.a)) found.push_back(pole_at(z, predictor.rate));
    std::sort(found.begin(), found.end(), [](Pole const& a, Pole const& b) { return a.centre < b.centre; });
    return found;
}

Pole follow_pole(Predictor const& predictor, Pole const& near) {
    Complex const start = root_of(near, predictor.rate);
    Complex z = start;
    for (int step = 0; step < 12; ++step) {
        auto const [value, slope] = value_and_slope(std::span(predictor.a), z);
        if (std::norm(slope) == 0) break;
        Complex const change = value / slope;
        z -= change;
        if (std::norm(change) < 1e-14) break;
    }
    bool const lost = !std::isfinite(z.real()) || z.imag() <= 0 || std::abs(z - start) > 0.5;
    return lost ? near : pole_at(z, predictor.rate);
}

double bound_of_centre(Predictor const& predictor, Pole const& pole, std::span<double const> r,
                       double samples) {
    int const p = predictor.order();
    Complex const z = root_of(pole, predictor.rate);
    Complex const slope = value_and_slope(std::span(predictor.a), z).second;
    Eigen::MatrixXd toeplitz(p, p);
    for (int i = 0; i < p; ++i)
        for (int j = 0; j < p; ++j) toeplitz(i, j) = r[static_cast<std::size_t>(std::abs(i - j))];
    toeplitz.diagonal().array() *= 1 + 1e-12;
    std::vector<Complex> powers{1};
    for (int k = 1; k < p; ++k) powers.push_back(powers.back() * z);
    Eigen::VectorXd gradient(p); // of the centre with respect to a1..ap: dz/da_k = -z^(p-k) / slope
    for (int k = 1; k <= p; ++k)
        gradient(k - 1) = (-powers[static_cast<std::size_t>(p - k)] / slope / z).imag() *
                          in_hertz(predictor.rate) / (2 * pi);
    return predictor.error / std::max(samples, 1.0) * gradient.dot(toeplitz.ldlt().solve(gradient));
}

} // namespace vowelway::analysis
