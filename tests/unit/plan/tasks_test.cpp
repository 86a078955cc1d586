// SPDX-License-Identifier: MIT
// How notes are bound to each other: common practice, no source.
#include "plan/cost.hpp"
#include "plan/tasks.hpp"
#include "vowelway/plan/sung_source.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::plan;

namespace {

SungNote note(double start, double length, double hz, char const* vowel, char const* syllable) {
    SungNote n{Pitch(hertz(hz)), {},           "1",   1,  seconds(start),
               seconds(length),  false,        false, {}, std::nullopt,
               std::nullopt,     std::nullopt, false};
    n.vowel = SungVowel{parse_vowel(vowel), {}, {}, VowelOrigin::typed};
    if (*syllable)
        n.syllables = {{syllable, Syllable::Part::single}};
    else
        n.melisma = true;
    return n;
}

} // namespace

TEST_CASE("fast notes are bound more tightly than slow ones") {
    CHECK(line_between(note(0, 0.1, 300, "a", "a"), note(0.1, 0.1, 320, "a", "")) >
          line_between(note(0, 1, 300, "a", "a"), note(1, 1, 320, "a", "")));
}

TEST_CASE("a repeated syllable stays, a rest, a new vowel, a leap let go") {
    auto const first = note(0, 0.5, 300, "a", "la");
    auto const step = line_between(first, note(0.5, 0.5, 320, "a", "da"));
    CHECK(line_between(first, note(0.5, 0.5, 300, "a", "la")) > 3 * step);
    CHECK(line_between(first, note(1.0, 0.5, 320, "a", "da")) < step);
    CHECK(line_between(first, note(0.5, 0.5, 320, "i", "di")) < step);
    CHECK(line_between(first, note(0.5, 0.5, 450, "a", "da")) < step);
    CHECK(line_between(first, note(0.5, 0.5, 320, "a", "")) > step); // one syllable: the ear compares
}

TEST_CASE("loud notes miss the ring more than soft ones") {
    auto n = note(0, 1, 300, "a", "la");
    CHECK(loudness_of(n).value == 0);
    n.dynamic = 2; // ff
    auto const loud = ring_factor(loudness_of(n));
    n.dynamic = -3; // pp
    CHECK(loud > 1);
    CHECK(ring_factor(loudness_of(n)) < 1);
}

// Story, Titze & Hoffman 1996, area functions through the chain matrix (docs/acoustics.md): the input
// reactance is compliant for /i/ from 293 to 499 Hz, for /ae/ from 719 to 785 Hz, and inertive below.
TEST_CASE("exposure: none below fR1, most just above it, over a band that narrows with fR1") {
    CHECK(exposure(hertz(300), semitones(-1)) == 0);
    CHECK(exposure(hertz(300), semitones(1)) == 1);
    CHECK(exposure(hertz(293), interval(hertz(293), hertz(510))) == 0);
    CHECK(exposure(hertz(293), interval(hertz(293), hertz(450))) > 0);
    CHECK(exposure(hertz(719), interval(hertz(719), hertz(750))) > 0);
    CHECK(exposure(hertz(719), interval(hertz(719), hertz(850))) == 0);
}
