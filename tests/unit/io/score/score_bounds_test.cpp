// SPDX-License-Identifier: MIT
// Scores past the bounds of read_score.hpp are refused with the bound; those at it are read.
#include "vowelway/core/error.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace vowelway;
using namespace vowelway::io;

namespace {

std::string note(std::string const& lyric = "la") {
    return "<note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration><lyric><text>" +
           lyric + "</text></lyric></note>";
}

std::string score(std::string const& bars, std::string const& title = "t") {
    return "<score-partwise><movement-title>" + title +
           "</movement-title><part-list><score-part id=\"P1\"><part-name>Voice</part-name></score-part>"
           "</part-list><part id=\"P1\">" +
           bars + "</part></score-partwise>";
}

std::string bar(std::string const& music, std::string const& number = "1") {
    return "<measure number=\"" + number + "\">" + music + "</measure>";
}

std::string times(int n, std::string const& text) {
    std::string out;
    for (int i = 0; i < n; ++i) out += text;
    return out;
}

/// What is wrong; empty when it is read.
std::string wrong(std::string const& text, std::string const& name = "s.musicxml") {
    try {
        parse_score(text, name);
    } catch (InputError const& error) {
        CHECK(error.place().file == name);
        return error.wrong();
    }
    return "";
}

} // namespace

TEST_CASE("the words under a note, any other text and attributes have a bound each") {
    CHECK(wrong(score(bar(note(std::string(longest_lyric, 'a'))))).empty());
    CHECK(wrong(score(bar(note(std::string(longest_lyric + 1, 'a'))))).find("1000 bytes") !=
          std::string::npos);
    CHECK(wrong(score(bar(note()), std::string(longest_text, 't'))).empty());
    CHECK(wrong(score(bar(note()), std::string(longest_text + 1, 't'))).find("65536 bytes") !=
          std::string::npos);
    CHECK(wrong(score(bar(note(), std::string(longest_attribute, '1')))).empty());
    CHECK(wrong(score(bar(note(), std::string(longest_attribute + 1, '1')))).find("4000 bytes") !=
          std::string::npos);
}

TEST_CASE("so have bars, notes and all words of a part") {
    CHECK(wrong(score(times(most_score_bars, bar(note())))).empty());
    CHECK(wrong(score(times(most_score_bars + 1, bar(note())))).find("20000 bars") != std::string::npos);
    auto const full = times(4000, note());
    CHECK(wrong(score(times(5, bar(full)))).empty());
    CHECK(wrong(score(times(5, bar(full)) + bar(note()))).find("20000 notes") != std::string::npos);
    auto const wordy = bar(times(1000, note(std::string(1000, 'a'))));
    CHECK(wrong(score(times(5, wordy))).find("4 MiB of words") != std::string::npos);
}
