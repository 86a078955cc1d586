// SPDX-License-Identifier: MIT
#include "plan/cost.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

using namespace vowelway;
using namespace vowelway::plan;
using doctest::Approx;

namespace {

// A singer, technique, vowel and note at random, wider than any that are sung.
struct Scene {
    Frequency quarter;
    Landscape land;
    Home home;
    Aim aim;
};

Scene random_scene(std::mt19937& random) {
    auto const in = [&](double low, double high) {
        return std::uniform_real_distribution(low, high)(random);
    };
    Technique t;
    t.text = in(0, 1.5);
    t.text_saturation = Bark{in(0.5, 6)};
    t.ring = in(0, 0.3);
    t.ring_tolerance = Decibels{in(0, 3)};
    t.level_per_octave = Decibels{in(0, 12)};
    t.upper_level_per_octave = Decibels{in(0, 30)};
    t.stability = in(0, 1);
    for (int k = 0; k < 2; ++k)
        t.relations.push_back({{std::uniform_int_distribution(1, 3)(random)},
                               in(0, 1) < 0.5 ? WantedRelation::Side::below : WantedRelation::Side::above,
                               ResonanceNumber{in(0, 1) < 0.7 ? 1 : 2},
                               in(0, 1) < 0.5,
                               in(0, 0.3),
                               std::nullopt,
                               std::nullopt});
    acoustics::Source source;
    source.slope = Decibels{in(-20, -6)};
    auto const quarter = acoustics::quarter_wave(centimetres(in(11, 20)));
    Pitch const fo(hertz(std::exp2(in(6, 10.2)))); // 64 to 1176 Hz
    auto const r1 = hertz(in(180, 1300)), r2 = std::max(hertz(in(500, 4000)), 1.15 * r1);
    Home home{r1, r2, {{in(1, 12)}, {in(4, 17)}}, Decibels{in(40, 90)}};
    for (auto& border : home.borders) {
        double const way = in(0, 6.3);
        border = {std::cos(way), 0.8 * std::sin(way), 0};
        border.from =
            border.open * home.spoken.openness.value + border.front * home.spoken.front.value + in(0.2, 2);
    }
    t.drift = Bark{in(0, 3)};
    t.other_vowel = in(0, 2);
    t.other_vowel_asked = in(0, 0.5);
    Landscape land(fo, Decibels{in(-12, 12)}, source, quarter);
    return {quarter, std::move(land), home, {std::move(t), Pitch(hertz(in(100, 500)))}};
}

} // namespace

TEST_CASE("what decides and what explains are the same objective, on 300 random scenes and all shapes") {
    ShapeGrid const grid;
    std::mt19937 random(11);
    for (int round = 0; round < 300; ++round) {
        CAPTURE(round);
        auto const scene = random_scene(random);
        ShapeCosts decides;
        fill_heard(grid, scene.land, scene.home, scene.aim, {}, decides);
        REQUIRE(decides.size() == grid.size());
        double worst = 0;
        for (std::size_t s = 0; s < grid.size(); ++s) {
            double const explains = heard_cost(grid, s, scene.land, scene.home, scene.aim).total();
            worst = std::max(worst, std::abs(double{decides[s]} - explains) / (1 + explains));
        }
        CHECK(worst < 1e-5); // single precision
    }
}

// The text term by the formula of docs/strategy.md.
double text_by_hand(Scene const& scene, acoustics::HeardPlace const& heard) {
    auto const& [quarter, land, home, aim] = scene;
    auto const& t = aim.technique;
    auto const kept = land.at(home.r1, home.r2).heard;
    // Accepted: from the own place to where the kept shape is heard, closer and aside, `drift` at most.
    auto const outside = [](double v, double a, double b) {
        return std::max({0.0, std::min(a, b) - v, v - std::max(a, b)});
    };
    double const open = home.spoken.openness.value, front = home.spoken.front.value, drift = t.drift.value;
    double const closer = std::max(open - drift, std::min(open, kept.openness.value)),
                 aside = std::clamp(kept.front.value, front - drift, front + drift);
    double const d = std::hypot(outside(heard.openness.value, closer, open),
                                0.8 * outside(heard.front.value, aside, front));
    auto const beyond = [&](acoustics::HeardPlace const& place) {
        double most = -1e9;
        for (auto const& b : home.borders)
            most = std::max(most, b.open * place.openness.value + b.front * place.front.value - b.from);
        return most;
    };
    double const farther = beyond(heard) - std::max(0.0, beyond(kept));
    bool const asked = std::any_of(t.relations.begin(), t.relations.end(),
                                   [](auto const& r) { return r.resonance.number == 1; });
    return t.text * d / (1 + d / t.text_saturation.value) +
           (asked ? t.other_vowel_asked : t.other_vowel) * std::clamp(3 * farther, 0.0, 1.0);
}

TEST_CASE("the terms are those of docs/strategy.md, on 100 random scenes") {
    ShapeGrid const grid;
    std::mt19937 random(12);
    for (int round = 0; round < 100; ++round) {
        auto const scene = random_scene(random);
        auto const& [quarter, land, home, aim] = scene;
        auto const& t = aim.technique;
        for (std::size_t s = 0; s < grid.size(); s += 7) {
            auto const r1 = home.r1 * std::exp2(grid.d1(s) / 12.0),
                       r2 = home.r2 * std::exp2(grid.d2(s) / 12.0);
            if (r1 < hertz(150) || r1 > hertz(1500) || r2 < hertz(480) || r2 > hertz(4000)) continue;
            auto const cost = heard_cost(grid, s, land, home, aim);
            auto const heard = land.at(r1, r2);
            CHECK(cost.text == Approx(text_by_hand(scene, heard.heard)).epsilon(1e-4).scale(1));
            double const missing =
                (expected_level(home.at_ease, aim, land.pitch()) - heard.level - t.ring_tolerance).value;
            double const loud = std::clamp(1 + 0.08 * land.loudness().value, 0.4, 1.8);
            CHECK(cost.ring == Approx(t.ring * loud * std::max(0.0, missing)).epsilon(1e-4).scale(1));
            auto const fo = land.pitch().frequency();
            // Not to be caught: from 1.5 semitones below fR1 on, smoothly.
            double const st = in_semitones(interval(r1, fo)), t1 = std::clamp((st + 1.5) / 2, 0.0, 1.0);
            double const first = st < 0.5 ? t1 * t1 * (3 - 2 * t1) : exposure(r1, interval(r1, fo));
            double const exposed = std::max(first, 0.5 * exposure(r1, interval(r1, 2.0 * fo)));
            CHECK(cost.stability == Approx(t.stability * exposed).scale(1));
        }
    }
}

TEST_CASE("a harmonic just above fR1 is exposed, one just below it is not") { // Titze 2008
    for (double r1 : {300.0, 500.0, 900.0}) {
        CAPTURE(r1);
        CHECK(exposure(hertz(r1), semitones(-0.5)) == 0);
        CHECK(exposure(hertz(r1), semitones(0)) == Approx(0.5));
        CHECK(exposure(hertz(r1), semitones(1)) == Approx(1));
        double before = 1;
        for (double st = 1; st < 12; st += 0.25) { // never grows again
            double const now = exposure(hertz(r1), semitones(st));
            CHECK(now <= before);
            before = now;
        }
        CHECK(before == 0);
    }
    // The band is wide under a low fR1 and narrow above 500 Hz.
    CHECK(exposure(hertz(300), semitones(4)) == 1);
    CHECK(exposure(hertz(600), semitones(4)) == 0);
}

TEST_CASE("the level expected grows with the pitch, faster from where the upper register begins") {
    Aim const aim{{}, Pitch(hertz(200))};
    auto const grown = [&](double fo) {
        return expected_level(Decibels{70}, aim, Pitch(hertz(fo))).value - 70;
    };
    CHECK(grown(200) == Approx(0).scale(1));
    CHECK(grown(400) == Approx(6.5));
    CHECK(grown(100) == Approx(-6.5));
    CHECK(grown(800) == Approx(6.5 + 25)); // classical: 25 dB an octave from 400 Hz
    CHECK(ring_factor(Decibels{0}) == 1);
    CHECK(ring_factor(Decibels{-10}) == 0.4);
    CHECK(ring_factor(Decibels{100}) == 1.8);
}
