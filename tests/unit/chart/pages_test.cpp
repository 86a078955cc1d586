// SPDX-License-Identifier: MIT
// Nothing leaves the page and no label covers another, with the real fonts and with fixed ones, whatever
// the plan.
#include "support/fixed_measurer.hpp"
#include "support/page_checks.hpp"
#include "support/sample_plan.hpp"
#include "vowelway/chart/draw.hpp"

#include <doctest/doctest.h>

using namespace vowelway;

namespace {

template <class Content> void check_all(Content const& content, chart::Kind kind = chart::Kind::automatic) {
    static auto const fonts = chart::chart_fonts();
    sample::FixedMeasurer const fixed;
    for (auto const paper : {chart::Paper::a4, chart::Paper::letter, chart::Paper::tablet})
        for (auto const* measurer : {static_cast<chart::TextMeasurer const*>(fonts.get()),
                                     static_cast<chart::TextMeasurer const*>(&fixed)}) {
            CAPTURE(std::string(to_string(paper)));
            CAPTURE((measurer == &fixed));
            int number = 0;
            for (auto const& page : chart::lay_out(content, {.paper = paper, .kind = kind}, *measurer)) {
                CAPTURE(++number);
                for (auto const& fault : sample::faults(page)) FAIL_CHECK(fault);
            }
        }
}

Singer soprano() {
    auto s = sample::singer();
    s.name = "Ottavia Brandt";
    s.voice = VoiceType::soprano;
    for (auto& v : s.vowels) {
        v.r1.centre = v.r1.centre * 1.15;
        v.r2.centre = v.r2.centre * 1.17;
    }
    return s;
}

} // namespace

TEST_CASE("a song: no label overlaps another or leaves the page") { check_all(sample::song_plan()); }

TEST_CASE("a range: no label overlaps another or leaves the page") {
    check_all(sample::range_plan());
    check_all(sample::plan_of({}, soprano(), parse_pitch_range("A3..C6")));
    check_all(sample::plan_of({}, sample::singer(), parse_pitch_range("E2..E6")));
    check_all(sample::plan_of({}, sample::singer(), parse_pitch_range("A3..B3")));
}

TEST_CASE("fourteen vowels are spread over pages") {
    auto singer = sample::singer();
    for (char const* ipa : {"y", "ø", "œ", "ɪ", "ʊ", "ə", "ʏ"}) {
        auto v = singer.vowels[singer.vowels.size() % 7];
        v.vowel = parse_ipa(ipa);
        singer.vowels.push_back(v);
    }
    auto const plan = sample::plan_of(sample::song(), singer, parse_pitch_range("C3..A4"));
    check_all(plan);
    CHECK(chart::lay_out(plan, {.kind = chart::Kind::pitch_by_vowel}, sample::FixedMeasurer{}).size() == 2);
}

TEST_CASE("hostile words: very long syllables, titles, names and bars") {
    auto passage = sample::song();
    passage.title = std::string(300, 'W');
    passage.composer =
        "A composer whose name and dates go on and on without any sign of coming to an end at all, ever";
    std::vector<sample::Tone> crowd;
    for (int i = 0; i < 64; ++i) crowd.push_back({i % 2 ? "A3" : "C4", 0.25, "strengthslengths-", "ɛ"});
    sample::add_bar(passage, crowd);
    passage.staff.measures.back().texts.push_back(
        {0, StaffText::Kind::tempo, std::string(200, 'x') + " and more"});
    passage.staff.measures.back().texts.push_back(
        {1, StaffText::Kind::words, "con molta espressione, ma senza affrettare"});
    passage.staff.measures.back().texts.push_back({1.5, StaffText::Kind::dynamic, "mf"});
    auto singer = sample::singer();
    singer.name =
        "A singer with an uncommonly long and winding name, the younger, of the old town by the river";
    singer.average = true;
    auto plan = sample::plan_of(passage, singer, parse_pitch_range("C3..A4"));
    for (auto& note : plan.notes)
        if (note.decision)
            note.decision->brief = "open the jaw, round the lips, lower the larynx and take care";
    check_all(plan);
}

TEST_CASE("notes far off the staff") {
    Passage passage;
    passage.title = "Ladder";
    sample::add_bar(passage, {{"C2", 1, "low", "o"},
                              {"C6", 1, "high", "a"},
                              {"E6", 0.5, "and", "a"},
                              {"F2", 0.5, "low", "o"},
                              {"C4", 1, "mid", "i"}});
    check_all(sample::plan_of(passage, sample::singer(), parse_pitch_range("C2..E6")));
}

TEST_CASE("a passage without notation, and one without any vowel sung") {
    auto passage = sample::song();
    passage.staff = {};
    check_all(sample::plan_of(passage, sample::singer(), parse_pitch_range("C3..A4")));
    for (auto& n : passage.notes) {
        n.vowel.reset();
        n.hummed = true;
    }
    check_all(sample::plan_of(passage, sample::singer(), parse_pitch_range("C3..A4")));
}

TEST_CASE("voices compared: two singers, eight, with many vowels") {
    plan::ComparedSinger const he{sample::singer(), {}}, she{soprano(), {}};
    check_all(plan::compare_singers({he, she}));
    std::vector<plan::ComparedSinger> eight;
    for (int i = 0; i < 8; ++i) {
        auto one = i % 2 ? he : she;
        one.singer.voice = all_voice_types[static_cast<std::size_t>(i)];
        one.singer.name = std::string(to_string(one.singer.voice)) + " with a rather long name";
        eight.push_back(one);
    }
    check_all(compare_singers(eight));
    check_all(plan::compare_singers({he, she}, parse_vowels("i y e ø ɛ œ a ɑ ɔ o u ə ɪ ʊ ʏ æ ʌ")));
}

TEST_CASE("voices compared: each voice has marks for turning and meeting on every vowel") {
    sample::FixedMeasurer const fixed;
    auto const comparison = plan::compare_singers({{sample::singer(), {}}, {soprano(), {}}});
    auto const pages = chart::lay_out(comparison, {}, fixed);
    REQUIRE(pages.size() == 1);
    auto const strokes = pages.front().drawing.strokes();
    for (auto const& row : comparison.rows)
        CHECK(strokes.find("/" + row.vowel.ipa() + "/") != std::string::npos);
}

TEST_CASE("resonance map: of a range, of a song, at the edges") {
    check_all(sample::song_plan(), chart::Kind::resonance_map);
    check_all(sample::range_plan(), chart::Kind::resonance_map);
    check_all(sample::plan_of({}, soprano(), parse_pitch_range("A3..C6")), chart::Kind::resonance_map);
}
