// SPDX-License-Identifier: MIT
// Passages typed by hand: what they mean, and what is refused. The format is ours (docs/formats.md).
#include "vowelway/io/score/read_score.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <unistd.h>

using namespace vowelway;
using namespace vowelway::io;
namespace fs = std::filesystem;

namespace {

Passage read(std::string const& text, ScoreOptions const& options = {}) {
    auto const path =
        fs::temp_directory_path() / ("vowelway_passage_" + std::to_string(::getpid()) + ".yaml");
    std::ofstream(path, std::ios::binary) << text;
    struct Gone {
        fs::path const& path;
        ~Gone() { fs::remove(path); }
    } const gone{path};
    return read_score(path, options);
}

void refused(std::string const& text, std::string_view wrong, int line, int column = 0) {
    CAPTURE(text);
    try {
        read(text);
        FAIL("no error");
    } catch (InputError const& error) {
        CAPTURE(error.what());
        CHECK(error.wrong().find(wrong) != std::string::npos);
        CHECK_FALSE(error.remedy().empty());
        CHECK(error.place().line == line);
        if (column > 0) CHECK(error.place().column == column);
    }
}

std::string one_note(std::string const& note) { return "vowelway: 1\nnotes:\n  - " + note + "\n"; }

} // namespace

TEST_CASE("seconds and beats, vowels and syllables, rests") {
    auto const passage = read("vowelway: 1\npassage: Rising fifths\ntempo: 60\nlanguage: it-IT\nnotes:\n"
                              "  - {pitch: F4, duration: 1 s, vowel: a}\n"
                              "  - {pitch: C5, duration: 2 beats, syllable: \"mi-\", vowel: E}\n"
                              "  - {rest: 1 beat}\n"
                              "  - {pitch: Bb4, duration: 500 ms, syllable: \"-a_e\", dynamic: p}\n"
                              "  - {pitch: A4, duration: 1.5 s}\n"
                              "  - {pitch: A4, duration: 1 s, hummed: true}\n");
    CHECK(passage.title == "Rising fifths");
    CHECK(passage.language == "it");
    REQUIRE(passage.notes.size() == 5);
    double const starts[] = {0, 1, 4, 4.5, 6}, lengths[] = {1, 2, 0.5, 1.5, 1}; // at 60 a beat is a second
    char const* texts[] = {"", "mi-", "-a‿e", "", ""};
    for (std::size_t i = 0; i < 5; ++i) {
        CAPTURE(i);
        CHECK(in_seconds(passage.notes[i].start) == doctest::Approx(starts[i]));
        CHECK(in_seconds(passage.notes[i].length) == doctest::Approx(lengths[i]));
        CHECK(passage.notes[i].text() == texts[i]);
    }
    CHECK(passage.notes[1].typed_ipa == "ɛ"); // X-SAMPA was typed
    CHECK(passage.notes[1].vowel->held.ipa() == "ɛ");
    CHECK(passage.notes[2].spelled.str() == "B♭4");
    CHECK(passage.notes[2].measure == "2");
    CHECK(passage.notes[2].beat == doctest::Approx(1));
    CHECK(passage.notes[2].dynamic == -2.0);
    CHECK(passage.notes[3].melisma);
    CHECK(passage.notes[4].hummed);
    CHECK(in_hertz(passage.notes[3].pitch.frequency()) == doctest::Approx(440)); // ISO 16
}

TEST_CASE("the staff has whole bars, ties over bar lines, and the key's signs") {
    auto const passage = read("vowelway: 1\ntempo: 60\ntime: 3/4\nkey: Eb major\nnotes:\n"
                              "  - {pitch: G4, duration: 2 beats, vowel: a}\n"
                              "  - {pitch: Ab4, duration: 2 beats, vowel: a}\n"
                              "  - {pitch: A4, duration: 1 beat, vowel: a}\n");
    auto const& bars = passage.staff.measures;
    REQUIRE(bars.size() == 2);
    CHECK(bars[0].key->fifths == -3); // E flat major: three flats
    CHECK(bars[0].time->beats == "3");
    CHECK(bars[0].clef->sign == 'G');
    REQUIRE(bars[0].events.size() == 2);
    CHECK(bars[0].events[1].heads[0].tie_begins);
    CHECK_FALSE(bars[0].events[1].heads[0].accidental); // A flat is in the key
    REQUIRE(bars[1].events.size() == 3);                // the tied note, the A, a rest that fills the bar
    CHECK(bars[1].events[0].heads[0].tie_ends);
    CHECK(bars[1].events[0].sung == bars[0].events[1].sung);
    CHECK(bars[1].events[1].heads[0].accidental == Accidental::natural);
    CHECK(bars[1].events[2].rest());
    for (auto const& bar : bars) {
        double end = 0;
        for (auto const& event : bar.events) {
            CHECK(event.onset == doctest::Approx(end));
            end = event.onset + event.length;
        }
        CHECK(end == doctest::Approx(3));
    }
    auto const low = read(one_note("{pitch: G2, duration: 1 s, vowel: a}"));
    CHECK(low.staff.measures[0].clef->sign == 'F');
    auto const moved = read(one_note("{pitch: G4, duration: 4 beats, vowel: a}"),
                            {.part = {}, .transpose_semitones = 2, .tuning = {}, .singer_range = {}});
    CHECK(moved.notes[0].spelled.str() == "A4");
    CHECK(moved.staff.measures[0].key->fifths == 2);
}

TEST_CASE("what is refused, with its line and column") {
    refused("", "", 1);
    refused("passage: x\n", "format version is missing", 1, 1);
    refused("vowelway: 2\nnotes: []\n", "format version 2", 1, 11);
    refused("vowelway: 1\n", "no notes", 1);
    refused("vowelway: 1\nnotes: []\n", "only rests", 2);
    refused("vowelway: 1\nnots: []\n", "nots", 2, 1);
    refused("vowelway: 1\ntempo: -3\nnotes: []\n", "tempo", 2, 8);
    refused("vowelway: 1\ntempo: nan\nnotes: []\n", "tempo", 2, 8);
    refused("vowelway: 1\nlanguage: Italian\nnotes: []\n", "not a language", 2);
    refused("vowelway: 1\ntime: 3\nnotes: []\n", "time signature", 2);
    refused("vowelway: 1\nkey: H dur\nnotes: []\n", "not a key", 2);
    refused(one_note("{pitch: H4, duration: 1 s}"), "not a pitch", 3, 13);
    refused(one_note("{pitch: F4}"), "no duration", 3);
    refused(one_note("{duration: 1 s}"), "no pitch", 3);
    refused(one_note("{pitch: F4, duration: 1}"), "no unit", 3);
    refused(one_note("{pitch: F4, duration: 1 hour}"), "not a unit", 3);
    for (auto const* duration : {"0 s", "-1 s", "nan s", "inf s", "1e9 s", "0.0001 ms", "s"})
        refused(one_note("{pitch: F4, duration: " + std::string(duration) + "}"), "", 3);
    refused(one_note("{pitch: F4, duration: 1 s, vowel: q7}"), "", 3);
    refused(one_note("{pitch: F4, duration: 1 s, vowel: a, hummed: true}"), "no vowel", 3);
    refused(one_note("{pitch: F4, duration: 1 s, dynamic: loud}"), "not a dynamic", 3);
    refused(one_note("{rest: 1 s, pitch: F4}"), "pitch", 3);
    refused("vowelway: 1\nnotes: &n\n  - *n\n", "aliases", 2);
    refused("vowelway: 1\nnotes: [", "", 2);
    std::string long_passage = "vowelway: 1\nnotes:\n";
    for (int i = 0; i < 10; ++i) long_passage += "  - {pitch: F4, duration: 599 s, vowel: a}\n";
    refused(long_passage, "longer than an hour", 9);
}

TEST_CASE("plain text: syllables and pitches, one by one or line by line") {
    auto const typed = [](std::string const& text, std::string const& name = "song.txt") {
        return parse_score(text, name);
    };
    auto const passage = typed(
        "title: A song\nlanguage: it\ntempo: 60\n# a remark\nmi- C4 2 | ra E4\nF#4 1/2\nrest\nD4 sol 3\n");
    CHECK(passage.title == "A song");
    REQUIRE(passage.notes.size() == 4);
    char const* texts[] = {"mi-", "-ra", "", "sol"};
    double const starts[] = {0, 2, 3, 4.5}, lengths[] = {2, 1, 0.5, 3}; // at 60 a beat is a second
    for (std::size_t i = 0; i < 4; ++i) {
        CAPTURE(i);
        CHECK(passage.notes[i].text() == texts[i]);
        CHECK(in_seconds(passage.notes[i].start) == doctest::Approx(starts[i]));
        CHECK(in_seconds(passage.notes[i].length) == doctest::Approx(lengths[i]));
    }
    CHECK(passage.notes[2].melisma);
    CHECK(passage.notes[2].spelled == SpelledPitch{'F', 1, 4});
    // Known by its content; two words on one note; YAML in a text file.
    CHECK(typed("a C4 mor D4", "song").notes.size() == 2);
    CHECK(typed("va in C4", "x.song").notes[0].syllables.size() == 2);
    CHECK(typed("vowelway: 1\nnotes:\n  - {pitch: F4, duration: 1 s}\n", "x.txt").notes.size() == 1);

    auto const fails = [&](std::string const& text, std::string_view wrong, int line) {
        CAPTURE(text);
        try {
            typed(text);
            FAIL("no error");
        } catch (InputError const& error) {
            CHECK(error.wrong().find(wrong) != std::string::npos);
            CHECK(error.place().line == line);
        }
    };
    fails("C4 la\nmi-\n", "has no pitch", 2);
    fails("la C4\n\n2 D4", "length", 3);
    fails("tempo: 60\ntempo: 72\nla C4", "twice", 2);
    fails("tempo: fast\nla C4", "tempo", 1);
    fails("la C4 100000", "ten minutes", 1);
}
