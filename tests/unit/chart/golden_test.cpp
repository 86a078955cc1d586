// SPDX-License-Identifier: MIT
// Small charts, stroke by stroke, against tests/golden. What they show is made by hand (tests/support), never
// planned: a golden changes with the drawing alone. To remake them: run the test program with
// VOWELWAY_REMAKE_GOLDENS=1 (it then fails on purpose) and read the difference before committing it.
#include "support/fixed_measurer.hpp"
#include "support/sample_explanation.hpp"
#include "support/source_dir.hpp"
#include "vowelway/chart/draw.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>
#include <iterator>

using namespace vowelway;

namespace {

void compare(std::string const& name, std::vector<chart::Page> const& pages) {
    std::string strokes;
    for (auto const& page : pages)
        strokes +=
            "page " + std::to_string(static_cast<int>(page.size.width)) + "\n" + page.drawing.strokes();
    std::string const file = vowelway::test::source_dir() + "/tests/golden/" + name + ".strokes";
    if (std::getenv("VOWELWAY_REMAKE_GOLDENS")) {
        std::ofstream(file) << strokes;
        FAIL("golden remade: " << file);
    }
    std::ifstream in(file);
    REQUIRE_MESSAGE(in.good(), file << " is missing");
    std::string const golden{std::istreambuf_iterator<char>(in), {}};
    if (strokes == golden) return;
    std::size_t at = 0, line = 1;
    while (at < std::min(strokes.size(), golden.size()) && strokes[at] == golden[at])
        line += strokes[at++] == '\n';
    auto const line_of = [&](std::string const& s) {
        auto const from = at == 0 ? 0 : s.rfind('\n', at - 1) + 1;
        return s.substr(from, s.find('\n', from) - from);
    };
    FAIL(file << ":" << line << "\n  golden: " << line_of(golden) << "\n  now:    " << line_of(strokes));
}

plan::Plan two_bars() {
    Passage p;
    p.title = "Two bars";
    using enum BeamPart;
    sample::add_bar(p, {{"C4", 1, "Mi-", "i"},
                        {"F#4", 0.5, "-o", "o", false, 0, {begin}},
                        {"G4", 0.5, "", "", false, 0, {end}},
                        {nullptr, 1},
                        {"A4", 1, "bel", "ɛ", true}});
    sample::add_bar(p, {{"A4", 2, ""}, {"D4", 2, "so-", "o", false, 0, {}, false, false, true}});
    p.staff.measures.back().right = Barline::final;
    auto singer = sample::singer();
    std::erase_if(singer.vowels, [](auto const& v) { return v.vowel.base == U'a' || v.vowel.base == U'u'; });
    return sample::plan_of(p, singer, parse_pitch_range("C4..A4"));
}

plan::Plan last_changed() {
    auto plan = two_bars();
    auto& d = *plan.notes.back().decision;
    d.advice = plan::Advice::modify;
    d.gestures = {{acoustics::Gesture::Part::jaw, 0.5, "open the jaw"}};
    d.brief = "open the jaw";
    d.target.shade = parse_ipa("ɔ");
    return plan;
}

/// The same with a reach that ends at both sides and at a fifth above the own fR1.
plan::Plan with_reach() {
    auto plan = two_bars();
    for (auto& v : plan.vowels) {
        auto const r1 = v.resonances.r1.centre, r2 = v.resonances.r2.centre;
        v.reach = {{r1, 0.85 * r2, 1.15 * r2, true, true, false},
                   {1.5 * r1, 0.9 * r2, 1.1 * r2, true, true, true}};
    }
    return plan;
}

plan::Comparison of_two() {
    auto tenor = sample::singer(), baritone = sample::singer();
    baritone.name = "Bruno Lisk";
    for (auto& v : baritone.vowels)
        for (auto* r : {&v.r1, &v.r2}) r->centre = r->centre * 0.9;
    return sample::comparison_of({tenor, baritone});
}

plan::NoteExplanation high_i() {
    auto passage = two_bars().passage;
    passage.notes[3].vowel = SungVowel{.held = parse_ipa("i"), .before = {}, .after = {}};
    return sample::explanation_of(sample::plan_of(passage, sample::singer(), parse_pitch_range("C4..A4")), 3);
}

} // namespace

TEST_CASE("golden: passage sheet of two bars, the last note changed") {
    compare("passage_sheet",
            chart::lay_out(last_changed(), {.kind = chart::Kind::passage_sheet}, sample::FixedMeasurer{}));
}

TEST_CASE("golden: pencil view of two bars, the last note changed") {
    compare("pencil_view",
            chart::lay_out(last_changed(), {.kind = chart::Kind::pencil}, sample::FixedMeasurer{}));
}

TEST_CASE("golden: pitch-by-vowel plan of a sixth") {
    compare("pitch_by_vowel",
            chart::lay_out(two_bars(), {.kind = chart::Kind::pitch_by_vowel}, sample::FixedMeasurer{}));
}

TEST_CASE("golden: resonance map at A4") {
    compare("resonance_map",
            chart::lay_out(with_reach(), {.kind = chart::Kind::resonance_map}, sample::FixedMeasurer{}));
}

TEST_CASE("golden: two voices compared") {
    compare("voices_compared", chart::lay_out(of_two(), {}, sample::FixedMeasurer{}));
}

TEST_CASE("golden: one note explained") {
    compare("note_explained", chart::lay_out(high_i(), {}, sample::FixedMeasurer{}));
}
