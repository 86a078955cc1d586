// SPDX-License-Identifier: MIT
// A take listened to while it is made. The sounds are noise through one resonance, made here; no measuring
// rests on them.
#include "vowelway/analysis/guided_take.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>
#include <random>
#include <vector>

using namespace vowelway;
using namespace vowelway::analysis;

namespace {

constexpr double sampled_at = 16000;

/// Noise around a frequency that may glide, at a level in dB below full scale (about).
std::vector<float> noise(double s, double level, double from, double to) {
    std::mt19937 random(3);
    std::normal_distribution<double> normal;
    std::vector<float> out;
    double one = 0, two = 0;
    auto const count = static_cast<int>(s * sampled_at);
    for (int i = 0; i < count; ++i) {
        double const f = from + (to - from) * i / count,
                     radius = std::exp(-std::numbers::pi * 80 / sampled_at);
        double const y = normal(random) + 2 * radius * std::cos(2 * std::numbers::pi * f / sampled_at) * one -
                         radius * radius * two;
        two = one;
        one = y;
        out.push_back(static_cast<float>(y * std::pow(10, level / 20) / 20));
    }
    return out;
}

void feed(GuidedTake& take, std::vector<float> const& sound) {
    for (std::size_t at = 0; at < sound.size(); at += 700) // as a microphone gives it, in pieces of its own
        take.hear(std::span(sound).subspan(at, std::min<std::size_t>(700, sound.size() - at)));
}

} // namespace

TEST_CASE("a held vowel is good, and is kept with what was just before it") {
    GuidedTake take(Decibels{-60});
    feed(take, noise(1, -70, 600, 600));
    CHECK_FALSE(take.sounding());
    feed(take, noise(1.6, -20, 600, 600));
    CHECK(take.sounding());
    CHECK_FALSE(take.done());
    feed(take, noise(0.8, -70, 600, 600));
    CHECK(take.done());
    CHECK(take.again() == "");
    double const kept = static_cast<double>(take.samples().size()) / sampled_at;
    CHECK(kept > 1.8);
    CHECK(kept < 2.6);
}

TEST_CASE("silence, a blip and what is too loud are asked for again, each with what to do") {
    GuidedTake silent(Decibels{-60});
    feed(silent, noise(11, -75, 600, 600));
    CHECK(silent.done());
    CHECK(silent.again().starts_with("nothing was heard"));

    GuidedTake blip(Decibels{-60});
    feed(blip, noise(0.2, -20, 600, 600));
    feed(blip, noise(1, -75, 600, 600));
    CHECK(blip.done());
    CHECK(blip.again().starts_with("too short"));

    GuidedTake loud(Decibels{-60});
    auto clipped = noise(1.5, 12, 600, 600);
    for (auto& x : clipped) x = std::fmax(-1.0F, std::fmin(1.0F, x));
    feed(loud, clipped);
    feed(loud, noise(1, -75, 600, 600));
    CHECK(loud.again().starts_with("too loud"));
}

TEST_CASE("three seconds are enough") {
    GuidedTake take(Decibels{-60});
    feed(take, noise(5, -20, 600, 600));
    CHECK(take.done());
    CHECK(static_cast<double>(take.samples().size()) / sampled_at < 3.5);
}

TEST_CASE("a level is that of the sound, without what lies below the voice") {
    std::vector<float> tone, hum;
    for (int i = 0; i < 16000; ++i) {
        tone.push_back(static_cast<float>(0.1 * std::sin(2 * std::numbers::pi * 1000 * i / sampled_at)));
        hum.push_back(static_cast<float>(0.1 * std::sin(2 * std::numbers::pi * 10 * i / sampled_at)));
    }
    // a sine of amplitude 0.1 has a mean square of 0.005: -23.0 dB
    CHECK(level_of(tone, hertz(sampled_at)).value == doctest::Approx(-23.0).epsilon(0.02));
    CHECK(level_of(hum, hertz(sampled_at)).value < -40);
    CHECK(level_of({}, hertz(sampled_at)).value == doctest::Approx(-120));
}
