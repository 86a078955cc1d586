// SPDX-License-Identifier: MIT
// Rooms made of a direct sound and noise that dies away exponentially: is the time found, and does the theory
// hold?
#include "vowelway/analysis/room.hpp"

#include "support/probe_synthesis.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <complex>

using namespace vowelway;
using namespace vowelway::analysis;
namespace make = probe_synthesis;

namespace {

constexpr double rate = 16000;

/// A second of noise that stops at once, its field dying away by 60 dB in t60 s, `share` of the steady energy
/// in the field; then the background, 40 dB below.
std::vector<float> stopped(double t60, double share, unsigned seed) {
    std::mt19937 random(seed);
    auto const direct = make::white(16000, random), field = make::white(32000, random),
               hiss = make::white(32000, random);
    std::vector<float> x(32000);
    for (std::size_t n = 0; n < x.size(); ++n) {
        double const after = n < 16000 ? 0 : (static_cast<double>(n) - 16000) / rate;
        double const ring =
            t60 > 0 ? std::sqrt(share) * std::pow(10, -3 * after / t60) : (n < 16000 ? std::sqrt(share) : 0);
        double const dry = n < 16000 ? std::sqrt(1 - share) * direct[n] : 0;
        x[n] = static_cast<float>(0.1 * (dry + ring * field[n] + 0.01 * hiss[n]));
    }
    return x;
}

} // namespace

TEST_CASE("the time and the share of a ringing room are read from the end of a sound") {
    for (auto const& [t60, share] : std::vector<std::pair<double, double>>{
             {0.2, 0.2}, {0.2, 0.5}, {0.5, 0.2}, {0.5, 0.5}, {1.0, 0.2}, {1.0, 0.5}}) {
        std::vector<Room> endings;
        for (unsigned seed = 0; seed < 5; ++seed) {
            auto const x = stopped(t60, share, seed);
            if (auto const one = dying_away(x, hertz(rate), 0, 17600, x.size())) endings.push_back(*one);
        }
        CAPTURE(t60);
        CAPTURE(share);
        REQUIRE(endings.size() == 5);
        auto const room = room_of(endings);
        CHECK(in_seconds(room->reverberation) == doctest::Approx(t60).epsilon(0.15));
        CHECK(room->share == doctest::Approx(share).epsilon(0.35));
    }
}

TEST_CASE("a dry room has no share, a sound cut short by the next says nothing") {
    auto const x = stopped(0, 0.5, 7);
    auto const dry = dying_away(x, hertz(rate), 0, 16160, x.size());
    REQUIRE(dry);
    CHECK(dry->share == 0);
    CHECK_FALSE(dying_away(x, hertz(rate), 0, 16160, 16400));
    CHECK_FALSE(room_of({}));
}

// The response of direct sound and field, summed ray by ray, without the closed form.
TEST_CASE("a room blurs like a short noise: the integral of its ripple over frequency") {
    constexpr double t60 = 0.3, share = 0.5;
    double const tau = t60 / (6 * std::log(10.0)), step = 0.5; // Hz
    constexpr int rooms = 400, reach = 120;
    std::vector<double> covariance(reach + 1, 0.0);
    std::mt19937 random(3);
    std::uniform_real_distribution<double> unit;
    std::normal_distribution<double> normal;
    for (int r = 0; r < rooms; ++r) {
        std::vector<std::complex<double>> response(reach + 1, std::sqrt(1 - share));
        constexpr int rays = 150;
        for (int k = 0; k < rays; ++k) {
            double const delay =
                -tau * std::log(1 - unit(random)); // so many rays that the energy falls with tau
            std::complex<double> const size{normal(random), normal(random)};
            for (int i = 0; i <= reach; ++i)
                response[static_cast<std::size_t>(i)] +=
                    std::sqrt(share / (2 * rays)) * size * std::polar(1.0, -2 * make::pi * step * i * delay);
        }
        for (std::size_t i = 0; i <= reach; ++i)
            covariance[i] += (std::norm(response[0]) - 1) * (std::norm(response[i]) - 1) / rooms;
    }
    double integral = 0; // over both signs of the distance
    for (std::size_t i = 0; i <= reach; ++i) integral += (i == 0 ? 1 : 2) * covariance[i] * step;
    Room const room{seconds(t60), share};
    CHECK(1 / integral == doctest::Approx(in_seconds(room.like_noise_of())).epsilon(0.2));

    // At harmonics far apart only the variance counts; near together they are as good as noise.
    CHECK(in_seconds(room.like_noise_of(hertz(500))) == doctest::Approx(1 / (0.75 * 500)).epsilon(0.02));
    CHECK(in_seconds(room.like_noise_of(hertz(2))) ==
          doctest::Approx(in_seconds(room.like_noise_of())).epsilon(0.02));
}
