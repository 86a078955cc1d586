// SPDX-License-Identifier: MIT
#include "analysis/roots.hpp"

#include <Eigen/Eigenvalues>
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <complex>
#include <limits>
#include <numbers>
#include <random>
#include <vector>

using namespace vowelway::analysis;

namespace {

using Complex = std::complex<double>;
constexpr double near =
    1e-5; // 0.02 Hz at a rate of 10 kHz: some pairs lie so close that doubles tell no more

/// The polynomial with these roots and, of those off the axis, their mirror images.
std::vector<double> with_roots(std::vector<Complex> const& roots) {
    std::vector<Complex> a{1};
    auto const times = [&](Complex z) {
        a.push_back(0);
        for (std::size_t k = a.size(); k-- > 1;) a[k] -= z * a[k - 1];
    };
    for (auto const& z : roots) {
        times(z);
        if (z.imag() != 0) times(std::conj(z));
    }
    std::vector<double> real;
    for (auto const& c : a) real.push_back(c.real());
    return real;
}

/// What Eigen's solver for any matrix finds of the companion matrix, above the axis.
std::vector<Complex> by_general_solver(std::vector<double> const& a) {
    auto const p = static_cast<Eigen::Index>(a.size()) - 1;
    Eigen::MatrixXd companion = Eigen::MatrixXd::Zero(p, p);
    for (Eigen::Index k = 0; k < p; ++k) companion(0, k) = -a[static_cast<std::size_t>(k) + 1];
    companion.diagonal(-1).setOnes();
    std::vector<Complex> found;
    Eigen::EigenSolver<Eigen::MatrixXd> const solver(companion, false);
    for (Complex const z : solver.eigenvalues())
        if (z.imag() > 1e-9) found.push_back(z);
    return found;
}

/// The greatest distance of one of these to the nearest of those, which are as many.
double farthest(std::vector<Complex> const& these, std::vector<Complex> const& those) {
    REQUIRE(these.size() == those.size());
    double most = 0;
    for (auto const& z : these) {
        double nearest = std::numeric_limits<double>::infinity();
        for (auto const& y : those) nearest = std::min(nearest, std::abs(z - y));
        most = std::max(most, nearest);
    }
    return most;
}

} // namespace

TEST_CASE("roots: those of a quadratic as the formula has them, none where both are real") {
    auto const found = upper_roots(std::vector<double>{1, -1, 0.5}); // (1 +- i) / 2
    REQUIRE(found.size() == 1);
    CHECK(std::abs(found[0] - Complex(0.5, 0.5)) < 1e-15);
    CHECK(upper_roots(std::vector<double>{1, -0.3, 0.02}).empty()); // 0.1 and 0.2
    CHECK(upper_roots(std::vector<double>{1, -0.3}).empty());
    CHECK(upper_roots(std::vector<double>{1}).empty());
}

TEST_CASE("roots: thousands of polynomials as linear prediction has them, against the general solver of "
          "eigenvalues") {
    std::mt19937 random(3);
    std::uniform_real_distribution<double> any(0, 1);
    for (int round = 0; round < 3000; ++round) {
        std::vector<Complex> roots;
        auto const pairs = 1 + static_cast<int>(9 * any(random)), alone = static_cast<int>(3 * any(random));
        for (int i = 0; i < pairs; ++i)
            roots.push_back(
                std::polar(0.6 + 0.42 * any(random), std::numbers::pi * (0.01 + 0.98 * any(random))));
        for (int i = 0; i < alone; ++i) roots.emplace_back(1.9 * any(random) - 0.95, 0.0);
        auto const a = with_roots(roots);
        CHECK(farthest(by_general_solver(a), upper_roots(a)) < near);
        std::erase_if(roots, [](Complex z) { return z.imag() == 0; });
        CHECK(farthest(roots, upper_roots(a)) < near);
    }
}

TEST_CASE("roots: pairs that fall together, at 0 and outside the circle are found as well") {
    Complex const z = std::polar(0.95, 0.5);
    CHECK(farthest({z, z, std::polar(0.9, 2.0)}, upper_roots(with_roots({z, z, std::polar(0.9, 2.0)}))) <
          1e-3);
    CHECK(farthest({z}, upper_roots(with_roots({z, 0.0, 0.0, 0.0}))) < 1e-9);
    CHECK(farthest({3.0 * z, z}, upper_roots(with_roots({3.0 * z, z, -2.5}))) < 1e-9);
    std::vector<Complex> circle; // z^12 = -1: all as near to 0, where the search begins
    for (int k = 0; k < 6; ++k) circle.push_back(std::polar(1.0, std::numbers::pi * (2 * k + 1) / 12));
    std::vector<double> a(13, 0.0);
    a[0] = a[12] = 1;
    CHECK(farthest(circle, upper_roots(a)) < 1e-9);
}

TEST_CASE("roots: coefficients that are no numbers have none") {
    double const none = std::numeric_limits<double>::quiet_NaN();
    CHECK(upper_roots(std::vector<double>{1, none, 0.2, 0.1}).empty());
    CHECK(upper_roots(std::vector<double>{1, 0.3, 0.2, std::numeric_limits<double>::infinity()}).empty());
}
