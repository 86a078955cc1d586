// SPDX-License-Identifier: MIT
// Parts together. What must hold whatever the planner decides: arithmetic of partials, and that nothing is
// heard below fo.
#include "vowelway/plan/choir.hpp"
#include "vowelway/plan/choir_words.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace vowelway;
using namespace vowelway::plan;

namespace {

Singer section_singer(std::string name, VoiceType type, double scale) {
    Singer s;
    s.name = std::move(name);
    s.voice = type;
    struct Row {
        char const* vowel;
        double r1, r2;
    };
    for (auto const& row :
         {Row{"i", 300, 2180}, Row{"e", 420, 1900}, Row{"a", 700, 1240}, Row{"u", 330, 700}}) {
        VowelResonances v;
        v.vowel = parse_vowel(row.vowel);
        v.r1 = {hertz(scale * row.r1), hertz(0.05 * scale * row.r1), false, {}};
        v.r2 = {hertz(scale * row.r2), hertz(0.03 * scale * row.r2), false, {}};
        s.vowels.push_back(v);
    }
    return s;
}

struct LineNote {
    char const* pitch;
    char const* word; ///< empty: continues the syllable before
    double start, length;
};

ChoirPart section(std::string name, VoiceType type, double scale, char const* vowel,
                  std::vector<LineNote> const& line) {
    PlanRequest request;
    request.singer = section_singer(name, type, scale);
    request.draws = 0;
    for (auto const& sung : line) {
        SungNote note{request.passage.tuning.pitch(parse_spelled_pitch(sung.pitch)),
                      parse_spelled_pitch(sung.pitch)};
        note.measure = std::to_string(static_cast<int>(sung.start) + 1);
        note.start = seconds(sung.start);
        note.length = seconds(sung.length);
        note.melisma = *sung.word == 0;
        if (*sung.word != 0) note.syllables.push_back({sung.word});
        note.vowel = SungVowel{.held = parse_vowel(vowel), .before = {}, .after = {}};
        request.passage.notes.push_back(std::move(note));
    }
    ChoirPart out;
    out.name = std::move(name);
    out.plan = make_plan(std::move(request));
    return out;
}

Choir choir_on(char const* vowel, char const* soprano, char const* alto, char const* tenor,
               char const* bass) {
    auto const chord = [](char const* pitch) { return std::vector<LineNote>{{pitch, "la", 0, 2}}; };
    std::vector<ChoirPart> parts;
    parts.push_back(section("Soprano", VoiceType::soprano, 1.17, vowel, chord(soprano)));
    parts.push_back(section("Alto", VoiceType::alto, 1.12, vowel, chord(alto)));
    parts.push_back(section("Tenor", VoiceType::tenor, 1, vowel, chord(tenor)));
    parts.push_back(section("Bass", VoiceType::bass, 0.95, vowel, chord(bass)));
    return choir_of(std::move(parts), Technique{});
}

} // namespace

TEST_CASE("a soprano far above fR1 leaves the others, who sing as they speak") {
    // fo = 880 Hz on a vowel whose fR1 is 351 Hz: nothing is heard below fo, so the first peak lies above
    // 880 Hz, 7.8 Bark, against 3.4 Bark of the vowel (Traunmüller's formula): over three Bark more open.
    auto const choir = choir_on("i", "A5", "A3", "A3", "A2");
    REQUIRE(choir.words.size() == 1);
    auto const& word = choir.words.front();
    CHECK(word.homophonic);
    CHECK(word.parts_company());
    CHECK(word.apart > Bark{3});
    CHECK(word.sections[0].leaves);
    for (std::size_t i = 1; i < 4; ++i) CHECK_FALSE(word.sections[i].leaves);
    CHECK_FALSE(word.why.empty());
    CHECK(choir.rehearse == std::vector<std::size_t>{0});
    // Low, every vowel is heard as itself (docs/acoustics.md): the sections match.
    auto const low = choir_on("a", "A3", "A3", "A2", "A2");
    CHECK_FALSE(low.words.front().parts_company());
    CHECK(low.rehearse.empty());
}

TEST_CASE("a common vowel is heard as one, and no section is asked for what its plan does already") {
    std::size_t found = 0;
    for (auto const* vowel : {"i", "e", "a", "u"})
        for (auto const* top : {"C5", "E5", "G5"}) {
            auto const choir = choir_on(vowel, top, "G4", "C4", "C3");
            auto const& word = choir.words.front();
            if (!word.has_common) continue;
            ++found;
            CHECK(word.common_apart.value <= heard_as_one.value + 1e-9);
            for (auto const& section : word.sections) {
                CHECK(section.extra >= 0);
                CHECK(section.extra <= 2); // nobody leaves the word for the others' sake
                if (section.ask.empty())
                    CHECK(std::abs(section.common.openness.value - section.heard.openness.value) < 0.3);
            }
        }
    CHECK(found > 0);
}

TEST_CASE("the same line in two parts is heard as one") {
    std::vector<ChoirPart> parts;
    for (auto const* name : {"Tenor 1", "Tenor 2"})
        parts.push_back(section(name, VoiceType::tenor, 1, "i", {{"A4", "la", 0, 2}}));
    auto const choir = choir_of(std::move(parts), Technique{});
    CHECK(choir.words.front().apart.value == doctest::Approx(0));
    CHECK(choir.rehearse.empty());
    CHECK(choir.chords.empty()); // two are no chord
}

TEST_CASE("words are what begins together, homophonic only where nobody sings on") {
    std::vector<ChoirPart> parts;
    parts.push_back(section("A", VoiceType::soprano, 1, "i",
                            {{"A5", "one", 0, 1}, {"A5", "two", 1, 1}, {"A5", "", 2, 1}}));
    parts.push_back(section("B", VoiceType::bass, 1, "i",
                            {{"A2", "One,", 0, 1}, {"A2", "two", 1, 1}, {"A2", "three", 2, 1}}));
    parts.push_back(section("C", VoiceType::bass, 1, "i", {{"C3", "one", 0, 2}, {"C3", "four", 2, 1}}));
    auto const choir = choir_of(std::move(parts), Technique{});
    REQUIRE(choir.words.size() == 2); // "three" and "four" are alone, and so is what goes on
    CHECK(choir.words[0].sections.size() == 3);
    CHECK(choir.words[0].homophonic);
    CHECK(choir.words[1].sections.size() == 2);
    CHECK_FALSE(choir.words[1].homophonic);
    CHECK(choir.rehearse.front() == 0);
}

// What can be mended comes first: common practice, no source.
TEST_CASE("a chord that comes again is rehearsed once, and what cannot be mended last") {
    std::vector<ChoirPart> parts;
    parts.push_back(section("A", VoiceType::soprano, 1, "i",
                            {{"A5", "la", 0, 1}, {"E5", "la", 1, 1}, {"A5", "la", 2, 2}}));
    parts.push_back(
        section("B", VoiceType::bass, 1, "i", {{"A2", "la", 0, 1}, {"A2", "la", 1, 1}, {"A2", "la", 2, 2}}));
    auto const choir = choir_of(std::move(parts), Technique{});
    REQUIRE(choir.words.size() == 3);
    CHECK(choir.words[1].has_common);
    CHECK_FALSE(choir.words[2].has_common);
    CHECK(ask_of(choir, choir.words[2]) == "No vowel that all reach at ease: let it part.");
    CHECK(choir.rehearse == std::vector<std::size_t>{1, 2}); // of the same chords the longer
    CHECK(choir.words[2].also == std::vector<std::size_t>{0});
}

TEST_CASE("partials of an octave and of a tempered fifth coincide, as arithmetic has them") {
    // 2 x C3 = C4; 3 x C3 and 2 x G3 differ by 1.955 cents in equal temperament.
    auto const choir = choir_on("a", "C5", "G3", "C4", "C3");
    REQUIRE(choir.chords.size() == 1);
    auto const& word = choir.words.front();
    auto const pitch = [&](SharedPartial::Of const& of) {
        auto const& section = word.sections[of.section];
        auto const& plan = choir.parts[section.part].plan;
        return in_hertz(plan.passage.notes[section.note].pitch.frequency()) * of.harmonic;
    };
    CHECK_FALSE(choir.chords[0].together.empty());
    for (auto const& partial : choir.chords[0].together) {
        CHECK(partial.of.size() > 1);
        for (auto const& of : partial.of)
            CHECK(std::abs(1200 * std::log2(pitch(of) / pitch(partial.of.front()))) <= same_partial.value);
        // In octaves and fifths nothing lies between 2 cents and a comma.
        CHECK(partial.spread.value < 2.1);
    }
    for (auto const& rub : choir.chords[0].rubs) CHECK(rub.spread > same_partial);
}

TEST_CASE("the director is told a pitch that the music has, and who shares it") {
    // The harmonic series: the bass's third partial on C3 is G4, the tenor's second on C4 is C5.
    auto const choir = choir_on("i", "G5", "G4", "C4", "C3");
    REQUIRE(choir.rehearse.size() == 1);
    auto const said = chord_words_of(choir, choir.words.front());
    CAPTURE(said.tune);
    REQUIRE(said.tune.starts_with("Tune on "));
    auto const pitch = said.tune.substr(8, said.tune.find(':') - 8);
    auto const key = parse_spelled_pitch(pitch).key_number();
    auto const& chord = choir.chords.front();
    auto const heard = Tuning{}.key_number(chord.together.front().frequency);
    CHECK(std::abs(key - heard) < 0.3);
    CHECK(chord.together.front().of.size() > 1);
    // Alone and in pairs nobody tunes a chord.
    std::vector<ChoirPart> two;
    two.push_back(section("Soprano", VoiceType::soprano, 1.17, "i", {{"A5", "la", 0, 2}}));
    two.push_back(section("Bass", VoiceType::bass, 0.95, "i", {{"A2", "la", 0, 2}}));
    auto const pair = choir_of(std::move(two), Technique{});
    CHECK(chord_words_of(pair, pair.words.front()).tune.empty());
}

TEST_CASE("where all sections do the same, the one that goes farthest is named") {
    // Both above fR1 of /i/ (350, 336 Hz) and the shape kept; the higher one is heard farther from it.
    int found = 0;
    for (auto const* top : {"A4", "B4", "C5", "D5", "E5"}) {
        std::vector<ChoirPart> two;
        two.push_back(section("Soprano", VoiceType::soprano, 1.17, "i", {{top, "la", 0, 2}}));
        two.push_back(section("Alto", VoiceType::alto, 1.12, "i", {{"F4", "la", 0, 2}}));
        auto const choir = choir_of(std::move(two), Technique{});
        auto const& word = choir.words.front();
        if (!word.why.starts_with("All")) continue;
        ++found;
        CHECK(word.why == "All: too high for the spoken vowel; Soprano most");
        CHECK(named_bars_of(choir, word) == "bar 1");
    }
    CHECK(found > 0);
}
