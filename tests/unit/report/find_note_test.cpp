// SPDX-License-Identifier: MIT
#include "support/sample_plan.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/report/find_note.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using report::find_note;

namespace {

/// The remedy of the refusal; empty when the note is there.
std::string remedy(Passage const& passage, std::string const& measure, double beat) {
    try {
        find_note(passage, {"song.mxl", measure, beat});
    } catch (InputError const& e) {
        CHECK(e.place().file == "song.mxl");
        return e.remedy();
    }
    return {};
}

bool has(std::string const& text, std::string const& part) { return text.find(part) != std::string::npos; }

} // namespace

// The tune of tests/support/sample_plan.hpp: bars 1 to 3 are rests; bar 4 rests for two beats, then has C3
// and F3; bar 5 has A3, G3 on 2.5, F3 on 3; the last, 14, has one F4.
TEST_CASE("a note is found by its bar and beat") {
    auto const song = sample::song();
    CHECK(find_note(song, {"", "4", 3}) == 0);
    CHECK(find_note(song, {"", "4", 4}) == 1);
    CHECK(find_note(song, {"", "5", 2.5}) == 3);
    CHECK(find_note(song, {"", "14", 1}) == song.notes.size() - 1);
}

TEST_CASE("without a beat it is the first note of the bar") {
    auto const song = sample::song();
    CHECK(find_note(song, {"", "4", 0}) == 0);
    CHECK(find_note(song, {"", "5", 0}) == 2);
}

TEST_CASE("a refusal names the notes around") {
    auto const song = sample::song();
    auto const within = remedy(song, "5", 2);
    CHECK(has(within, "the nearest are bar 5, beat 1 "));
    CHECK(has(within, " and bar 5, beat 2.5 "));
    auto const before = remedy(song, "2", 1);
    CHECK(has(before, "the nearest is bar 4, beat 3 "));
    auto const after = remedy(song, "14", 3);
    CHECK(has(after, "the nearest is bar 14, beat 1 "));
}

TEST_CASE("a bar that is not there: how far the song goes") {
    auto const text = remedy(sample::song(), "77", 0);
    CHECK(has(text, "there is no such bar"));
    CHECK(has(text, "from bar 4, beat 3 "));
    CHECK(has(text, "to bar 14, beat 1 "));
}

TEST_CASE("a note without a vowel is not found") {
    auto song = sample::song();
    for (auto& note : song.notes) note.vowel.reset();
    CHECK(remedy(song, "4", 3) == "the passage has no note with a vowel");
}
