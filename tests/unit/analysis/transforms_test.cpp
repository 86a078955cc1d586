// SPDX-License-Identifier: MIT
// The transforms and the filter against their definitions, summed term by term.
#include "analysis/even_inverse.hpp"
#include "analysis/filter.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <complex>
#include <numbers>
#include <random>
#include <vector>

using namespace vowelway::analysis;

namespace {

std::vector<double> any(std::size_t count) {
    std::mt19937 random(static_cast<unsigned>(count));
    std::vector<double> x;
    for (std::size_t n = 0; n < count; ++n) x.push_back(static_cast<double>(random()) / 4294967296.0 - 0.3);
    return x;
}
double angle(std::size_t k, std::size_t n, std::size_t length) {
    return 2 * std::numbers::pi * static_cast<double>(k * n % length) / static_cast<double>(length);
}

} // namespace

TEST_CASE("lengths for transforms are multiples of four of the factors 2, 3 and 5") {
    CHECK(fast_length(1) == 4);
    CHECK(fast_length(800) == 800);
    CHECK(fast_length(801) == 864); // 810 is no multiple of four
}

TEST_CASE("bins are sums over the samples, and samples sums over the bins") {
    for (std::size_t const n : {4U, 60U, 800U}) {
        auto const x = any(n);
        auto const bins = frame_fft().forward(x);
        REQUIRE(bins.size() == n / 2 + 1);
        for (std::size_t k = 0; k < bins.size(); k += n / 4) {
            std::complex<double> sum = 0;
            for (std::size_t t = 0; t < n; ++t) sum += x[t] * std::polar(1.0, -angle(k, t, n));
            CHECK(std::abs(bins[k] - sum) < 1e-10);
        }
        auto const back = frame_fft().inverse(bins, n);
        for (std::size_t t = 0; t < n; ++t) CHECK(back[t] == doctest::Approx(x[t]).epsilon(1e-10));
    }
}

TEST_CASE("the autocorrelation is the sum over a power spectrum and its mirror image") {
    for (std::size_t const m : {4U, 6U, 30U, 600U, 800U}) {
        auto const power = any(m + 1);
        auto const r = even_inverse(m).of(power);
        REQUIRE(r.size() == m + 1);
        for (std::size_t n = 0; n <= m; n += n < 5 ? 1 : 7) {
            double sum = power[0] + (n % 2 ? -1 : 1) * power[m];
            for (std::size_t k = 1; k < m; ++k) sum += 2 * power[k] * std::cos(angle(k, n, 2 * m));
            CHECK(std::abs(r[n] - sum / static_cast<double>(2 * m)) < 1e-12);
        }
    }
}

TEST_CASE("a filter adds the samples under its taps") {
    for (std::size_t const length : {1U, 7U, 8U, 29U}) {
        auto const taps = any(5), x = any(length + 4);
        std::vector<double> y(length);
        filter(x, taps, y);
        for (std::size_t n = 0; n < length; ++n) {
            double sum = 0;
            for (std::size_t k = 0; k < 5; ++k) sum += taps[k] * x[n + k];
            CHECK(y[n] == doctest::Approx(sum));
        }
    }
}

TEST_CASE("a filter whose taps mirror about the middle is that filter") {
    for (std::size_t const length : {1U, 7U, 8U, 29U})
        for (std::size_t const middle : {0U, 1U, 6U}) {
            auto const half = any(middle + 1), x = any(length + 2 * middle);
            std::vector<double> taps(2 * middle + 1), y(length), as_any(length);
            for (std::size_t k = 0; k <= middle; ++k) taps[middle - k] = taps[middle + k] = half[k];
            filter_even(x, half, y);
            filter(x, taps, as_any);
            for (std::size_t n = 0; n < length; ++n) CHECK(y[n] == doctest::Approx(as_any[n]));
        }
}
