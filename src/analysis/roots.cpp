// SPDX-License-Identifier: MIT
#include "analysis/roots.hpp"

#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>
#include <optional>

namespace vowelway::analysis {
namespace {

using Complex = std::complex<double>;

constexpr double above_axis = 1e-9;
constexpr double near_enough = 1e-10; // square of a step after which polishing does the rest
constexpr double as_it_should_be = 1e-9;
constexpr int most_steps = 40, most_polishing = 4;

/// The nearest root to 0, roughly, by steps whose error shrinks with the third power.
std::optional<Complex> laguerre(std::vector<double> const& a) {
    auto const n = static_cast<double>(a.size() - 1);
    Complex z = 0;
    for (int step = 0; step < most_steps; ++step) {
        Complex value = a[0], slope = 0, half_bend = 0;
        for (std::size_t k = 1; k < a.size(); ++k) {
            half_bend = half_bend * z + slope;
            slope = slope * z + value;
            value = value * z + a[k];
        }
        if (std::norm(value) < 1e-30) return z;
        Complex const g = slope / value, square = g * g, h = square - 2.0 * half_bend / value;
        Complex const root = std::sqrt((n - 1) * (n * h - square));
        Complex const up = g + root, down = g - root;
        Complex const change = n / (std::norm(up) > std::norm(down) ? up : down);
        z -= change;
        if (std::norm(change) < near_enough) return z;
        if (!std::isfinite(std::norm(z))) break;
    }
    return std::nullopt;
}

template <class Number> Number polished(std::span<double const> a, Number z) {
    for (int step = 0; step < most_polishing; ++step) {
        auto const [value, slope] = value_and_slope(a, z);
        if (std::norm(slope) == 0) break;
        auto const change = value / slope;
        z -= change;
        if (std::norm(change) < near_enough) break; // squared twice by this step
    }
    return z;
}

/// Without the root `x`.
void divide_out(std::vector<double>& a, double x) {
    for (std::size_t k = 1; k + 1 < a.size(); ++k) a[k] += x * a[k - 1];
    a.pop_back();
}
/// Without the pair of z.
void divide_out(std::vector<double>& a, Complex z) {
    double const twice = 2 * z.real(), square = std::norm(z);
    for (std::size_t k = 1; k + 2 < a.size(); ++k) a[k] += twice * a[k - 1] - (k > 1 ? square * a[k - 2] : 0);
    a.resize(a.size() - 2);
}

std::optional<std::vector<Complex>> by_laguerre(std::span<double const> a) {
    std::vector<double> rest(a.begin(), a.end());
    std::vector<Complex> found;
    double sum = 0, product = 1;
    while (rest.size() > 1) {
        auto const rough = rest.size() == 2 ? Complex(-rest[1]) : laguerre(rest);
        if (!rough) return std::nullopt;
        if (std::abs(rough->imag()) > std::sqrt(near_enough)) {
            auto z = polished(a, *rough);
            divide_out(rest, z);
            z = {z.real(), std::abs(z.imag())};
            sum += 2 * z.real(), product *= std::norm(z);
            if (z.imag() > above_axis) found.push_back(z);
        } else {
            double const x = polished(a, rough->real());
            divide_out(rest, x);
            sum += x, product *= -x;
        }
    }
    bool const whole =
        std::abs(sum + a[1]) < as_it_should_be && std::abs(product - a.back()) < as_it_should_be;
    return whole ? std::optional(std::move(found)) : std::nullopt;
}

std::vector<Complex> by_eigenvalues(std::span<double const> a) {
    auto const p = static_cast<Eigen::Index>(a.size()) - 1;
    Eigen::MatrixXd companion = Eigen::MatrixXd::Zero(p, p);
    for (Eigen::Index k = 0; k < p; ++k) companion(0, k) = -a[static_cast<std::size_t>(k) + 1];
    companion.diagonal(-1).setOnes();
    // A companion matrix has Hessenberg's form already: only the QR steps are left.
    Eigen::RealSchur<Eigen::MatrixXd> schur(p);
    schur.computeFromHessenberg(companion, Eigen::MatrixXd(), false);
    if (schur.info() != Eigen::Success) return {};
    auto const& t = schur.matrixT();
    std::vector<Complex> found;
    for (Eigen::Index k = 0; k + 1 < p; ++k) {
        if (t(k + 1, k) == 0) continue;
        double const half = 0.5 * (t(k, k) - t(k + 1, k + 1)),
                     square = half * half + t(k, k + 1) * t(k + 1, k);
        Complex const z{0.5 * (t(k, k) + t(k + 1, k + 1)), std::sqrt(std::max(-square, 0.0))};
        if (z.imag() > above_axis) found.push_back(z);
        ++k;
    }
    return found;
}

} // namespace

std::vector<Complex> upper_roots(std::span<double const> a) {
    if (a.size() < 3) return {};
    if (auto found = by_laguerre(a)) return *found;
    return by_eigenvalues(a);
}

} // namespace vowelway::analysis
