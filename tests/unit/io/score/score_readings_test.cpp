// SPDX-License-Identifier: MIT
// What a musician reads in the files of an independent MusicXML test suite, written down by hand
// (tests/data/scores/expected), against what is read.
#include "support/source_dir.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <unistd.h>
#include <vector>

using namespace vowelway;
using namespace vowelway::io;

namespace {

std::filesystem::path const scores =
    std::filesystem::path(vowelway::test::source_dir()) / "tests/data/scores";

/// "4", "1/2", "3+1/2".
double sum(std::string const& text) {
    double total = 0;
    std::istringstream in(text);
    for (std::string term; std::getline(in, term, '+');) {
        auto const slash = term.find('/');
        total += slash == std::string::npos
                     ? std::stod(term)
                     : std::stod(term.substr(0, slash)) / std::stod(term.substr(slash + 1));
    }
    return total;
}

struct Expected {
    std::string file;
    ScoreOptions options;
    struct Note {
        std::string bar, pitch, syllable;
        double beat = 0, quarters = 0;
    };
    std::vector<Note> notes;
};

Expected read_expected(std::filesystem::path const& path) {
    Expected out;
    std::ifstream in(path);
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line);
        std::string first, second;
        words >> first >> second;
        if (first.empty() || first == "#") continue;
        if (first == "file")
            out.file = second;
        else if (first == "part")
            out.options.part = second;
        else if (first == "verse")
            out.options.verse = std::stoi(second);
        else if (first == "transpose")
            out.options.transpose_semitones = std::stod(second);
        else {
            Expected::Note note{first, {}, {}, sum(second), 0};
            std::string length;
            words >> note.pitch >> length >> note.syllable;
            note.quarters = sum(length);
            out.notes.push_back(note);
        }
    }
    return out;
}

std::string syllable(SungNote const& note) {
    auto const text = note.text();
    return !text.empty() ? text : note.melisma ? "~" : ".";
}

} // namespace

TEST_CASE("scores are read as a musician reads them") {
    int files = 0;
    for (auto const& entry : std::filesystem::directory_iterator(scores / "expected")) {
        if (entry.path().extension() != ".txt") continue;
        ++files;
        auto const name = entry.path().filename().string();
        CAPTURE(name);
        auto const expected = read_expected(entry.path());
        REQUIRE(!expected.file.empty());
        auto const passage = read_score(scores / "suite" / expected.file, expected.options);
        REQUIRE(passage.notes.size() == expected.notes.size());
        for (std::size_t i = 0; i < expected.notes.size(); ++i) {
            CAPTURE(i);
            auto const& note = passage.notes[i];
            auto const& wanted = expected.notes[i];
            CHECK(note.measure == wanted.bar);
            CHECK(note.beat == doctest::Approx(wanted.beat));
            CHECK(note.spelled.str() == wanted.pitch);
            // None of these files gives a tempo: a quarter lasts 60/72 s.
            CHECK(in_seconds(note.length) * 72 / 60 == doctest::Approx(wanted.quarters));
            CHECK(syllable(note) == wanted.syllable);
        }
    }
    CHECK(files >= 30);
}

TEST_CASE("metronome marks set the time: dots, note values, one value equal to another") {
    // 31c: dotted quarter = 100; long = 100; dotted quarter = dotted half; long = dotted 32nd;
    // dotted quarter = dotted half; dotted quarter = 77. In quarters a minute, worked out by hand:
    // 150, 1600, x2 = 3200, x(3/16)/16 = 37.5, x2 = 75, 115.5. Two quarter notes each.
    auto const passage = read_score(scores / "suite/31c-MetronomeMarks.xml");
    double const tempos[] = {150, 1600, 3200, 37.5, 75, 115.5};
    REQUIRE(passage.notes.size() == 12);
    double start = 0;
    for (std::size_t i = 0; i < 12; ++i) {
        CAPTURE(i);
        double const length = 60 / tempos[i / 2];
        CHECK(in_seconds(passage.notes[i].start) == doctest::Approx(start));
        CHECK(in_seconds(passage.notes[i].length) == doctest::Approx(length));
        start += length;
    }
}

TEST_CASE("on the staff an octave clef is read as if it were plain") {
    // 12ad: "Should all display as middle C if clef octavation is ignored".
    auto const passage = read_score(scores / "suite/12ad-Clefs-Extreme-Octave.xml");
    for (auto const& measure : passage.staff.measures) {
        REQUIRE(measure.events.size() == 1);
        CHECK(measure.events.front().heads.front().written.str() == "C4");
    }
}

TEST_CASE(
    "the staff of a transposing part shows what is written, transposing the song moves it with its key") {
    auto const file = scores / "suite/72a-TransposingInstruments.xml";
    auto const trumpet = read_score(file, {.part = "1", .tuning = {}, .singer_range = {}});
    CHECK(trumpet.staff.measures.front().key->fifths == 2);
    CHECK(trumpet.staff.measures.front().events.front().heads.front().written.str() == "D4");
    auto const piano =
        read_score(file, {.part = "3", .transpose_semitones = -3, .tuning = {}, .singer_range = {}});
    CHECK(piano.staff.measures.front().key->fifths == 3);
    CHECK(piano.staff.measures.front().events[2].heads.front().written.str() == "C♯4");
    CHECK_FALSE(piano.staff.measures.front().events[2].heads.front().accidental); // in the signature
    auto const octave =
        read_score(file, {.part = "3", .transpose_semitones = -12, .tuning = {}, .singer_range = {}});
    CHECK(octave.notes.front().spelled.str() == "C3");
    CHECK(octave.staff.measures.front().events.front().heads.front().written.str() == "C4");
}

TEST_CASE("a score ordered by time reads like the same score ordered by parts") {
    // MusicXML 4.0: score-timewise holds measures of parts where score-partwise holds parts of measures.
    auto const note = [](char step, std::string const& syllable) {
        return std::string("<note><pitch><step>") + step +
               "</step><octave>4</octave></pitch><duration>4</duration><lyric><text>" + syllable +
               "</text></lyric></note>";
    };
    std::string const list = "<part-list><score-part id=\"A\"><part-name>Alto</part-name></score-part>"
                             "<score-part id=\"B\"><part-name>Bass</part-name></score-part></part-list>";
    auto const in = [](std::string const& element, std::string const& attribute, std::string const& content) {
        return "<" + element + " " + attribute + ">" + content + "</" + element + ">";
    };
    auto const part = [&](std::string const& id, std::string const& content) {
        return in("part", "id=\"" + id + "\"", content);
    };
    auto const bar = [&](std::string const& number, std::string const& content) {
        return in("measure", "number=\"" + number + "\"", content);
    };
    auto const by_part =
        "<score-partwise>" + list + part("A", bar("1", note('A', "one")) + bar("2", note('B', "two"))) +
        part("B", bar("1", note('C', "three")) + bar("2", note('D', "four"))) + "</score-partwise>";
    auto const by_time =
        "<score-timewise>" + list + bar("1", part("A", note('A', "one")) + part("B", note('C', "three"))) +
        bar("2", part("A", note('B', "two")) + part("B", note('D', "four"))) + "</score-timewise>";
    auto const read = [](std::string const& text, std::string const& wish) {
        auto const path = std::filesystem::temp_directory_path() /
                          ("vowelway_timewise_" + std::to_string(::getpid()) + ".xml");
        std::ofstream(path) << text;
        ScoreOptions options;
        options.part = wish;
        auto const passage = read_score(path, options);
        std::filesystem::remove(path);
        std::string out = passage.part;
        for (auto const& n : passage.notes) out += " " + n.measure + ":" + n.spelled.str() + ":" + n.text();
        return out;
    };
    CHECK(read(by_time, "Alto") == "Alto 1:A4:one 2:B4:two");
    CHECK(read(by_time, "2") == "Bass 1:C4:three 2:D4:four");
    for (auto const* wish : {"", "Alto", "Bass"}) CHECK(read(by_time, wish) == read(by_part, wish));
}
