// SPDX-License-Identifier: MIT
// A pitch that moves is followed; pulses of a creak and noise have none.
#include "analysis/pitch_path.hpp"
#include "vowelway/analysis/steady.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>
#include <random>
#include <vector>

using namespace vowelway;
using namespace vowelway::analysis;

namespace {

constexpr double sampled = 16000;

/// An impulse a period, from one pitch to another along a straight line of semitones, with noise 20 dB below.
std::vector<double> pulses(double from, double to, double length, double irregular, unsigned seed) {
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0, 1);
    std::uniform_real_distribution<double> even(-irregular, irregular);
    std::vector<double> x(static_cast<std::size_t>(length * sampled), 0.0);
    double energy = 0;
    for (double t = 0.002; t < length;) {
        auto const n = static_cast<std::size_t>(t * sampled);
        double const share = t * sampled - static_cast<double>(n);
        if (n + 1 < x.size()) x[n] += 1 - share, x[n + 1] += share, energy += 1;
        t += (1 + even(random)) / (from * std::pow(to / from, t / length));
    }
    double const level = std::sqrt(energy / static_cast<double>(x.size()) / 100);
    for (auto& v : x) v += level * noise(random);
    return x;
}

} // namespace

TEST_CASE("a pitch that falls by an octave in 0.3 s is followed, at any height of voice, and no octave is "
          "mistaken") {
    for (double from : {200.0, 280.0, 400.0, 500.0})
        for (unsigned seed = 1; seed <= 5; ++seed) {
            CAPTURE(from);
            auto const path = follow_pitch(pulses(from, from / 2, 0.3, 0, seed), hertz(sampled));
            CHECK(path.share > 0.8);
            CHECK(in_hertz(path.pitch) == doctest::Approx(from / std::numbers::sqrt2).epsilon(0.12));
            CHECK(path.movement.drift < -6);
        }
    for (double pitch : {95.0, 130.0, 190.0, 270.0, 390.0, 520.0}) {
        CAPTURE(pitch);
        auto const path = follow_pitch(pulses(pitch, pitch, 0.15, 0, 3), hertz(sampled));
        CHECK(path.share == 1);
        CHECK(in_hertz(path.pitch) == doctest::Approx(pitch).epsilon(0.03));
        CHECK(std::abs(path.movement.drift) < 0.5);
    }
}

TEST_CASE("neither the pulses of a creak nor noise have a pitch that can be followed") {
    for (unsigned seed = 1; seed <= 10; ++seed) {
        CAPTURE(seed);
        for (double rate : {20.0, 40.0, 65.0})
            CHECK(follow_pitch(pulses(rate, rate, 0.5, 0.2, seed), hertz(sampled)).share < 0.4);
        std::mt19937 random(seed);
        std::normal_distribution<double> noise(0, 1);
        std::vector<double> x(8000);
        for (auto& v : x) v = noise(random);
        CHECK(follow_pitch(x, hertz(sampled)).share < 0.25);
    }
    CHECK(follow_pitch(std::vector<double>(500, 0.0), hertz(sampled)).share == 0);
}

TEST_CASE("the steady part lies in the vowel, not in the hum that is heard behind it for longer") {
    std::mt19937 random(4);
    std::normal_distribution<float> noise(0, 1);
    Sound sound{std::vector<float>(16000), hertz(sampled), seconds(0)};
    for (std::size_t n = 0; n < sound.samples.size(); ++n) {
        double const t = static_cast<double>(n) / sampled;
        bool const vowel = t > 0.1 && t < 0.4;
        double const formant =
            600 + 40 * std::sin(2 * std::numbers::pi * 6 * t); // a mouth is never quite still
        double const voice =
            std::sin(2 * std::numbers::pi * formant * t) + std::sin(2 * std::numbers::pi * 120 * t);
        sound.samples[n] =
            static_cast<float>(vowel ? 0.3 * voice : 0.006 * std::sin(2 * std::numbers::pi * 200 * t)) +
            0.0003F * noise(random);
    }
    auto const part = steady_part(sound, {seconds(0), seconds(1)});
    REQUIRE(part);
    CHECK(in_seconds(part->span.start) > 0.09);
    CHECK(in_seconds(part->span.end) < 0.41);
}
