// SPDX-License-Identifier: MIT
// The page of one note: nothing leaves it and no label covers another, low and high, kept and changed.
#include "support/fixed_measurer.hpp"
#include "support/page_checks.hpp"
#include "support/sample_plan.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/plan/explain.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace vowelway;

namespace {

plan::NoteExplanation explained(char const* pitch, char const* vowel, std::string name = "Ottavio Brandt") {
    plan::PlanRequest request;
    request.singer = sample::singer();
    request.singer.name = std::move(name);
    request.passage = sample::song();
    request.draws = 4;
    auto& note = request.passage.notes[3];
    note.spelled = parse_spelled_pitch(pitch);
    note.pitch = request.passage.tuning.pitch(note.spelled);
    note.vowel = SungVowel{.held = parse_ipa(vowel), .before = {}, .after = {}};
    return explain_note(std::move(request), 3);
}

bool says(chart::Page const& page, std::string_view text) {
    auto const marks = page.drawing.marks();
    return std::ranges::any_of(marks,
                               [&](auto const& m) { return m.text.find(text) != std::string_view::npos; });
}

} // namespace

TEST_CASE("one note explained: no label overlaps another or leaves the page") {
    auto const fonts = chart::chart_fonts();
    sample::FixedMeasurer const fixed;
    for (auto const* pitch : {"C2", "C3", "A4", "C6"})
        for (auto const* vowel : {"i", "a", "u"}) {
            auto const e = explained(pitch, vowel);
            for (auto const paper : {chart::Paper::a4, chart::Paper::letter, chart::Paper::tablet})
                for (auto const* measurer : {static_cast<chart::TextMeasurer const*>(fonts.get()),
                                             static_cast<chart::TextMeasurer const*>(&fixed)}) {
                    CAPTURE(pitch);
                    CAPTURE(vowel);
                    CAPTURE(std::string(to_string(paper)));
                    CAPTURE((measurer == &fixed));
                    auto const pages = chart::lay_out(e, {.paper = paper}, *measurer);
                    REQUIRE(pages.size() == 1);
                    for (auto const& fault : sample::faults(pages.front())) FAIL_CHECK(fault);
                }
        }
}

TEST_CASE("the page says who, what and the caution, and shows the change only where there is one") {
    sample::FixedMeasurer const fixed;
    auto const high = explained("C5", "i"), low = explained("C3", "a");
    REQUIRE(high.changed);
    REQUIRE_FALSE(low.changed);
    auto const changed = chart::lay_out(high, {}, fixed), kept = chart::lay_out(low, {}, fixed);
    for (auto const* pages : {&changed, &kept}) {
        CHECK(says(pages->front(), "Ottavio Brandt"));
        CHECK(says(pages->front(), "Comfort decides"));
        CHECK(says(pages->front(), "fR1"));
    }
    CHECK(says(changed.front(), "changed as advised"));
    CHECK_FALSE(says(kept.front(), "changed as advised"));
    auto average = low;
    average.singer.average = true;
    CHECK(says(chart::lay_out(average, {}, fixed).front(), average_voice_notice));
}
