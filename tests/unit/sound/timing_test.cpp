// SPDX-License-Identifier: MIT
// Bars, beats and tempo of a small passage that begins with an upbeat.
#include "vowelway/sound/timing.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::sound;

namespace {

// 3/4 at 60: an upbeat of one quarter, two bars of three quarters, the last quarter a rest.
Passage upbeat() {
    Passage out;
    auto const add = [&](char const* bar, double beat, double start, double length) {
        out.notes.push_back({.pitch = Pitch(hertz(440)),
                             .spelled = {'A', 0, 4},
                             .measure = bar,
                             .beat = beat,
                             .start = seconds(start),
                             .length = seconds(length),
                             .syllables = {},
                             .typed_ipa = {},
                             .dynamic = {},
                             .vowel = {}});
    };
    add("0", 1, 0, 1);
    add("1", 1, 1, 2);
    add("1", 3, 3, 1);
    add("2", 1, 4, 2);
    std::size_t sung = 0;
    auto const measure = [&](char const* number, double length,
                             std::vector<std::pair<double, double>> const& notes) {
        StaffMeasure m;
        m.number = number;
        m.length = length;
        for (auto const& [onset, duration] : notes) {
            StaffEvent event;
            event.onset = onset;
            event.length = duration;
            event.heads.push_back({{'A', 0, 4}, {}, false, false});
            event.sung = sung++;
            m.events.push_back(event);
        }
        out.staff.measures.push_back(m);
    };
    measure("0", 1, {{0, 1}});
    measure("1", 3, {{0, 2}, {2, 1}});
    measure("2", 3, {{0, 2}});
    out.staff.measures[0].time = TimeSignature{.beats = "3", .beat_type = 4};
    return out;
}

} // namespace

TEST_CASE("beats follow the bars, and the upbeat is none of the first ones") {
    auto const t = timing_of(upbeat(), {});
    REQUIRE(t.beats.size() == 7);
    for (std::size_t i = 0; i < 7; ++i) {
        CHECK(in_seconds(t.beats[i].at) == doctest::Approx(static_cast<double>(i)));
        CHECK(t.beats[i].first_of_bar == (i == 1 || i == 4));
    }
    CHECK(t.notes.size() == 4);
    CHECK(in_seconds(t.length) == doctest::Approx(6));
    CHECK(in_seconds(t.quarter) == doctest::Approx(1));
}

TEST_CASE("a tempo stretches notes and beats alike") {
    auto const t = timing_of(upbeat(), {.from = {}, .to = {}, .quarter = seconds(0.5), .count_in = false});
    CHECK(in_seconds(t.notes[3].start) == doctest::Approx(2));
    CHECK(in_seconds(t.notes[3].length) == doctest::Approx(1));
    CHECK(in_seconds(t.beats[4].at) == doctest::Approx(2));
}

TEST_CASE("the count-in is a whole bar and leads into the upbeat") {
    auto const t = timing_of(upbeat(), {.from = {}, .to = {}, .quarter = {}, .count_in = true});
    // | 1 2 3 | 1 2 (3 = upbeat): five clicks before the first note.
    CHECK(in_seconds(t.begins) == doctest::Approx(5));
    CHECK(in_seconds(t.notes[0].start) == doctest::Approx(5));
    CHECK(t.beats[0].first_of_bar);
    CHECK(t.beats[3].first_of_bar);
    CHECK_FALSE(t.beats[4].first_of_bar);
    auto const from_bar = timing_of(upbeat(), {.from = "1", .to = "1", .quarter = {}, .count_in = true});
    CHECK(from_bar.notes.size() == 2);
    CHECK(in_seconds(from_bar.begins) == doctest::Approx(3));
}

TEST_CASE("what is not there is refused with what is there") {
    auto const refuses = [](Passage const& p, TimingAsked const& asked, char const* says) {
        try {
            timing_of(p, asked);
            FAIL("taken");
        } catch (InputError const& e) {
            CHECK(std::string(e.what()).find(says) != std::string::npos);
        }
    };
    auto const p = upbeat();
    refuses(p, {.from = "9", .to = {}, .quarter = {}, .count_in = false}, "the bars go from 0 to 2");
    refuses(p, {.from = "2", .to = "1", .quarter = {}, .count_in = false}, "comes after");
    refuses(p, {.from = {}, .to = {}, .quarter = seconds(0), .count_in = false}, "10 to 400");
    refuses({}, {}, "nothing is sung");
    auto no_bars = p;
    no_bars.staff = {};
    refuses(no_bars, {.from = {}, .to = {}, .quarter = {}, .count_in = true}, "no bars can be counted");
    CHECK(timing_of(no_bars, {}).notes.size() == 4);
}
