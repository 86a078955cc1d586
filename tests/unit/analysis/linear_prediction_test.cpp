// SPDX-License-Identifier: MIT
#include "vowelway/analysis/linear_prediction.hpp"

#include "support/probe_synthesis.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace vowelway;
using namespace vowelway::analysis;
namespace make = probe_synthesis;

namespace {
/// z^2 - 2 r cos(theta) z + r^2
Predictor pair_of_poles(double radius, double angle, double rate) {
    return {{1, -2 * radius * std::cos(angle), radius * radius}, 1, hertz(rate)};
}
} // namespace

TEST_CASE("a pole's radius is its bandwidth: r = 0.95 at 11025 Hz is 180.0 Hz (B = -ln(r) fs / pi)") {
    auto const found = poles(pair_of_poles(0.95, 0.5, 11025));
    REQUIRE(found.size() == 1);
    CHECK(in_hertz(found[0].bandwidth) == doctest::Approx(180.007).epsilon(1e-5));
    CHECK(in_hertz(found[0].centre) == doctest::Approx(0.5 * 11025 / (2 * make::pi)).epsilon(1e-9));
}

TEST_CASE(
    "500 Hz, 60 Hz wide, at 10 kHz: radius 0.981327, angle 0.314159 (z = exp(-pi B/fs + j 2 pi F/fs))") {
    auto const found = poles(pair_of_poles(0.981327, 0.314159, 10000));
    REQUIRE(found.size() == 1);
    CHECK(in_hertz(found[0].centre) == doctest::Approx(500).epsilon(1e-5));
    CHECK(in_hertz(found[0].bandwidth) == doctest::Approx(60).epsilon(1e-4));
}

TEST_CASE(
    "the autocorrelation of an AR(2) process gives its coefficients back (Yule-Walker, worked by hand)") {
    // x[n] = 0.5 x[n-1] - 0.3 x[n-2] + e: r1/r0 = 0.5 / 1.3, r2/r0 = 0.5 r1/r0 - 0.3
    double const r1 = 0.5 / 1.3, r2 = 0.5 * r1 - 0.3;
    auto const found = predict(std::vector<double>{1, r1, r2}, 2, hertz(8000));
    REQUIRE(found.order() == 2);
    CHECK(found.a[1] == doctest::Approx(-0.5));
    CHECK(found.a[2] == doctest::Approx(0.3));
    CHECK(found.error == doctest::Approx(1 - 0.5 * r1 + 0.3 * r2));
}

TEST_CASE("prediction from part of the spectrum sees what lies below the ceiling") {
    std::mt19937 random(1);
    auto const x =
        make::scaled(make::resonate(make::white(64000, random), {{600, 80}, {1500, 90}, {6000, 100}}, 16000));
    auto const spectrum = average_spectrum(x, hertz(16000));
    auto const r = band_autocorrelation(spectrum, hertz(3000), 4);
    auto const found = poles(predict(r, 4, hertz(6000)));
    REQUIRE(found.size() == 2);
    CHECK(in_hertz(found[0].centre) ==
          doctest::Approx(600).epsilon(0.03)); // the skirt of the pole at 6 kHz is not in the model
    CHECK(in_hertz(found[1].centre) == doctest::Approx(1500).epsilon(0.02));
}

TEST_CASE("the bound is that of an AR(1) pair worked by hand, and a pole is followed to its root") {
    // For AR(2) with poles r e^{+-j theta}: cov(a) = (1/N) [[1 - a2^2, a1 (1 - a2)], [.., 1 - a2^2]] (Box &
    // Jenkins)
    double const radius = 0.9, angle = 1.0, n = 1000, rate = 2 * make::pi; // so that hertz are radians
    auto const model = pair_of_poles(radius, angle, rate);
    double const a1 = model.a[1], a2 = model.a[2];
    double const r0 = (1 + a2) / ((1 - a2) * ((1 + a2) * (1 + a2) - a1 * a1));
    std::vector<double> const r{r0, -a1 / (1 + a2) * r0, (a1 * a1 / (1 + a2) - a2) * r0};
    double const v = (1 - a2 * a2) / n, c = a1 * (1 - a2) / n;
    // cos(theta) = -a1 / (2 sqrt(a2))
    double const g1 = 1 / (2 * radius * std::sin(angle)),
                 g2 = -a1 / (4 * std::pow(radius, 3) * std::sin(angle));
    double const expected = g1 * g1 * v + 2 * g1 * g2 * c + g2 * g2 * v;
    auto const pole = poles(model)[0];
    CHECK(bound_of_centre(model, pole, r, n) == doctest::Approx(expected).epsilon(1e-6));
    auto const followed = follow_pole(model, {hertz(0.95), hertz(0.1)});
    CHECK(in_hertz(followed.centre) == doctest::Approx(1.0).epsilon(1e-9));
}

TEST_CASE("a ringing without excitation is predicted exactly when the excitation has no weight") {
    make::Samples pulse(400, 0.0);
    pulse[20] = 1;
    auto const x = make::resonate(pulse, {{700, 60}, {1100, 80}}, 10000);
    std::vector<double> weights(x.size(), 1.0);
    for (std::size_t n = 0; n < 25; ++n) weights[n] = 0;
    WeightedMoments moments(4);
    moments.add(x, weights);
    auto const found = poles(moments.predict(4, hertz(10000)));
    REQUIRE(found.size() == 2);
    CHECK(in_hertz(found[0].centre) == doctest::Approx(700).epsilon(1e-4));
    CHECK(in_hertz(found[1].centre) == doctest::Approx(1100).epsilon(1e-4));
}
