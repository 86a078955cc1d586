// SPDX-License-Identifier: MIT
// The teacher's question: whispers of model tracts whose gestures are known (larynx, tongue, lips, jaw) and
// whose noise is made at a known place, through chain matrices that the estimator does not know (Sondhi &
// Schroeter 1987). Each fault must be said, the way back must end it, and nothing must be said of no change.
#include "vowelway/analysis/lesson.hpp"

#include "support/tract_synthesis.hpp"
#include "vowelway/acoustics/reachable.hpp"
#include "vowelway/acoustics/whispered.hpp"
#include "vowelway/analysis/check_profile.hpp"
#include "vowelway/analysis/history.hpp"
#include "vowelway/io/profile/built_in.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>

using namespace vowelway;
using namespace vowelway::analysis;
using acoustics::GestureVector;
namespace make = probe_synthesis;
using Kind = LessonPoint::Kind;

namespace {

std::vector<std::string> const vowels{"i", "e", "a", "o", "u"};

Singer const& tenor() {
    static auto const singer = io::built_in_voice(VoiceType::tenor);
    return singer;
}

acoustics::ReachableSet const& mouth_of(std::size_t vowel) {
    static auto const all = [] {
        std::vector<acoustics::ReachableSet> sets;
        for (auto const& v : vowels) sets.emplace_back(*tenor().find(parse_vowel(v)), centimetres(17));
        return sets;
    }();
    return all[vowel];
}

/// A second of noise through a tract; its power falls by `fall` dB in an octave. Its strength swings by a
/// quarter five times a second: no breath is as even as a machine's, or as a gain control leaves it (ours).
make::Samples whispered(acoustics::AreaFunction const& tract, acoustics::NoisePlace place, double fall,
                        std::mt19937& random) {
    std::size_t const n = 16384;
    constexpr double rate = 16000, step = 20;
    std::vector<double> levels{-200};
    for (double f = step; f <= rate / 2 + step; f += step)
        levels.push_back(
            acoustics::whispered_level(tract, hertz(f), acoustics::whispering_glottis, place).value -
            fall * std::log2(f / 1000));
    std::normal_distribution<double> normal;
    std::vector<make::Complex> x(n, 0.0);
    for (std::size_t k = 1; k < n / 2; ++k) {
        double const at = rate * static_cast<double>(k) / static_cast<double>(n) / step;
        auto const i = static_cast<std::size_t>(at);
        double const level = levels[i] + (at - static_cast<double>(i)) * (levels[i + 1] - levels[i]);
        x[k] = make::Complex(normal(random), normal(random)) * std::pow(10, level / 20);
        x[n - k] = std::conj(x[k]);
    }
    make::transform(x, true);
    make::Samples sound(n);
    for (std::size_t t = 0; t < n; ++t)
        sound[t] = x[t].real() * (1 + 0.25 * std::sin(2 * make::pi * 5 * static_cast<double>(t) / rate));
    double const size = std::sqrt(make::power(sound));
    for (auto& v : sound) v /= size;
    return sound;
}

struct Way {
    std::function<GestureVector(std::size_t vowel)> gesture = [](std::size_t) { return GestureVector{}; };
    double fall = 0; // dB in an octave
    int place = 0;   // of the noise, per cent of the way to the lips
};
Way all_do(GestureVector const& g) {
    return {.gesture = [g](std::size_t) { return g; }};
}

Measurements session(Way const& way, unsigned seed, Singer const& reference = tenor()) {
    std::mt19937 random(seed);
    make::Samples all(12000, 0.0);
    for (std::size_t v = 0; v < vowels.size(); ++v) {
        auto const tract = mouth_of(v).tract(way.gesture(v));
        acoustics::NoisePlace place;
        if (way.place > 0) place = tract.size() * static_cast<std::size_t>(way.place) / 100;
        auto const x = whispered(tract, place, way.fall, random);
        all.insert(all.end(), x.begin(), x.end());
        all.insert(all.end(), 8000, 0.0);
    }
    auto const hiss = make::white(all.size(), random);
    for (std::size_t n = 0; n < all.size(); ++n) all[n] += 0.018 * hiss[n];
    Recording r;
    r.name = "session";
    Listener listener(measuring_rate);
    listener.hear(make::scaled(all));
    r.heard = listener.finish();
    MeasureRequest q;
    q.reference = reference;
    q.vowels = parse_vowels("i e a o u");
    return measure({r}, q);
}

/// What is said of a session after another.
std::vector<LessonPoint> said(Way const& now, Way const& before, unsigned seed) {
    auto const first = session(before, 1);
    auto const profile =
        begin_profile("Student", VoiceType::tenor, {}, measured_history(first, "2026-11-01", ""), {});
    auto const second = session(now, seed, profile.singer); // as `check` does
    Remarks remarks;
    return lesson_points(second, check_all(second, profile, {}, "2026-11-08", remarks));
}

bool says(std::vector<LessonPoint> const& points, Kind kind) {
    return std::any_of(points.begin(), points.end(), [&](LessonPoint const& p) { return p.kind == kind; });
}

/// jaw, lip opening, lip protrusion, tongue height, tongue advancement, larynx
Way const articulated{.gesture = [](std::size_t v) -> GestureVector {
    switch (v) {
    case 0:
        return {-0.2, 0, 0, 0.2, 0.2, 0};
    case 1:
        return {0, 0, 0, 0, 0.2, 0};
    case 2:
        return {0.5, 0, 0, 0, 0, 0};
    case 3:
        return {0, -0.2, 0.3, 0, -0.1, 0};
    default:
        return {-0.1, -0.2, 0.3, 0, -0.2, 0};
    }
}};

} // namespace

TEST_CASE("the same mouth again: as last time, within a quarter of a semitone, and no advice") {
    for (unsigned seed : {2U, 3U, 4U}) {
        auto const points = said({}, {}, seed);
        REQUIRE(points.size() == 1);
        CHECK(points[0].kind == Kind::as_last_time);
        CHECK(points[0].size < 25);
        CHECK(points[0].tries.empty());
    }
}

TEST_CASE("a raised larynx is said, and on the way back it is said that all is lower") {
    auto const high = all_do({0, 0, 0, 0, 0, 1});
    for (unsigned seed : {2U, 3U}) {
        auto const up = said(high, {}, seed), back = said({}, high, seed);
        CHECK(says(up, Kind::all_higher));
        CHECK(!says(up, Kind::tongue_back));
        CHECK(!says(up, Kind::noise_in_front));
        CHECK(says(back, Kind::all_lower));
        CHECK(!says(back, Kind::all_higher));
        CHECK(up.at(0).says.find("larynx") != std::string::npos);
    }
}

TEST_CASE("a tongue drawn back is said of whispers, a lowered larynx and an open jaw are not taken for it") {
    auto const back = all_do({0, 0, 0, 0, -0.3, 0});
    for (unsigned seed : {2U, 3U}) {
        CHECK(says(said(back, {}, seed), Kind::tongue_back));
        CHECK(!says(said({}, back, seed), Kind::tongue_back));
        CHECK(!says(said(all_do({0, 0, 0, 0, 0, -0.5}), {}, seed), Kind::tongue_back));
        CHECK(!says(said(all_do({0.3, 0, 0, 0, 0, 0}), {}, seed), Kind::tongue_back));
    }
}

TEST_CASE("a dull noise is said, even noise is not") {
    for (unsigned seed : {2U, 3U}) {
        CHECK(says(said({.fall = 6}, {}, seed), Kind::dull_noise));
        CHECK(!says(said({.fall = 2}, {}, seed), Kind::dull_noise));
        CHECK(!says(said({}, {}, seed), Kind::thin_noise));
    }
}

TEST_CASE(
    "noise made in front, at the teeth, is said, and is not taken for a raised larynx, nor said on the way "
    "back") {
    Way const teeth{.place = 90};
    for (unsigned seed : {2U, 3U}) {
        auto const points = said(teeth, {}, seed);
        CHECK(says(points, Kind::noise_in_front));
        CHECK(!says(points, Kind::all_higher));
        CHECK(!says(said({}, teeth, seed), Kind::noise_in_front));
    }
}

TEST_CASE("vowels farther from their own centre are over-articulated, the way back brings them nearer") {
    for (unsigned seed : {2U, 3U}) {
        auto const more = said(articulated, {}, seed), less = said({}, articulated, seed);
        CHECK(says(more, Kind::wider_apart));
        CHECK(says(less, Kind::nearer));
        CHECK(!says(less, Kind::wider_apart));
    }
}
