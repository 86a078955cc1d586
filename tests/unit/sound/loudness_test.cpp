// SPDX-License-Identifier: MIT
// Loudness against the published test signals; ffmpeg's meter is asked in tests/whole.
#include "vowelway/sound/loudness.hpp"
#include "vowelway/sound/tones.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace vowelway;
using namespace vowelway::sound;

namespace {

void add(LoudnessMeter& meter, double hz, double dbfs, double length) {
    std::vector<float> x(static_cast<std::size_t>(length * 48000));
    for (std::size_t i = 0; i < x.size(); ++i)
        x[i] = static_cast<float>(std::pow(10, dbfs / 20) *
                                  std::sin(2 * std::numbers::pi * hz * static_cast<double>(i) / 48000));
    meter.hear(x);
}

} // namespace

TEST_CASE("a sine of 997 Hz at 0 dBFS in one channel reads -3.01 LUFS (ITU-R BS.1770-4, annex 1)") {
    LoudnessMeter meter;
    add(meter, 997, 0, 5);
    CHECK(meter.result().integrated.value == doctest::Approx(-3.01).epsilon(0.003));
    CHECK(meter.result().peak.value == doctest::Approx(0).epsilon(0.001));
}

// EBU Tech 3341, minimum requirements, cases 1, 2, 3 and 5: 1 kHz in two channels. One channel reads 3.01
// less.
TEST_CASE("the gates let pass what EBU Tech 3341 says") {
    auto const reads = [](std::initializer_list<std::pair<double, double>> parts) {
        LoudnessMeter meter;
        for (auto const& [level, length] : parts) add(meter, 1000, level, length);
        return meter.result().integrated.value + 3.01;
    };
    CHECK(std::abs(reads({{-23, 20}}) + 23) < 0.1);
    CHECK(std::abs(reads({{-33, 20}}) + 33) < 0.1);
    CHECK(std::abs(reads({{-36, 10}, {-23, 60}, {-36, 10}}) + 23) < 0.1);
    CHECK(std::abs(reads({{-72, 10}, {-36, 10}, {-23, 60}, {-36, 10}, {-72, 10}}) + 23) < 0.1);
    CHECK(std::abs(reads({{-26, 20}, {-20, 20.1}, {-26, 20}}) + 23) < 0.1);
}

// EBU Tech 3341, minimum requirements, cases 15 to 19: sines at parts of the rate, in phases in which no
// sample meets the peak; a meter of true peaks may read +0.2 or -0.4 dB beside. (Numbers from memory.)
TEST_CASE("the peak is found between the samples") {
    auto const reads = [](double part, double degrees, double amplitude) {
        LoudnessMeter meter;
        std::vector<float> x(48000);
        double const pi = std::numbers::pi;
        for (std::size_t i = 0; i < x.size(); ++i) { // without a step at either end
            double const edge =
                std::min<double>(static_cast<double>(std::min(i, x.size() - 1 - i)) / 4800, 1);
            x[i] = static_cast<float>(amplitude * edge *
                                      std::sin(2 * pi * static_cast<double>(i) / part + degrees * pi / 180));
        }
        meter.hear(x);
        return meter.result().peak.value;
    };
    auto const right = [](double read, double expected) {
        return read > expected - 0.4 && read < expected + 0.2;
    };
    CHECK(right(reads(4, 0, 0.5), -6));
    CHECK(right(reads(4, 45, 0.5), -6));
    CHECK(right(reads(6, 60, 0.5), -6));
    CHECK(right(reads(8, 67.5, 0.5), -6));
    CHECK(right(reads(4, 45, 1.41), 3));
    // What we make ends at 7 kHz: there the interpolation is near.
    for (double degrees : {0.0, 20.0, 40.0, 60.0, 80.0}) CHECK(std::abs(reads(7, degrees, 0.5) + 6.02) < 0.1);
}

TEST_CASE("silence has no loudness, and is not made loud") {
    LoudnessMeter meter;
    meter.hear(std::vector<float>(48000, 0.0F));
    CHECK(meter.result().integrated.value == -120);
    CHECK(balance({}).gain == 1);
}

TEST_CASE("what is balanced comes out at -23 LUFS, with its peak below -6 dBFS") {
    Programme programme;
    programme.items.push_back({"", seconds(0), seconds(2), [] { return tone(hertz(700), Decibels{50}); }});
    auto const b = balance(programme);
    LoudnessMeter meter;
    play(programme, b.gain, [&](std::span<float const> x) { meter.hear(x); });
    CHECK(meter.result().integrated.value == doctest::Approx(-23).epsilon(0.001));
    CHECK(meter.result().peak.value < -6);
    CHECK_FALSE(b.held_by_peak);
    // A click and long softness: the peak decides.
    programme.items = {{"", seconds(0), seconds(0.06), [] { return click(true, Decibels{100}); }},
                       {"", seconds(1), seconds(5), [] { return tone(hertz(700), Decibels{50}); }}};
    auto const held = balance(programme);
    LoudnessMeter again;
    play(programme, held.gain, [&](std::span<float const> x) { again.hear(x); });
    CHECK(held.held_by_peak);
    CHECK(again.result().peak.value < -6);
}
