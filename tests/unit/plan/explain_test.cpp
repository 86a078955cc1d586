// SPDX-License-Identifier: MIT
#include "vowelway/plan/explain.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

using namespace vowelway;
using namespace vowelway::plan;

namespace {

Resonance resonance_of(double hz, double sd) {
    return {.centre = hertz(hz), .sd = hertz(sd), .bandwidth = {}};
}

// An invented soprano who goes up an arpeggio on /a/ and ends on a high /i/, which lies far above its fR1.
PlanRequest arpeggio() {
    PlanRequest out;
    out.singer.name = "Invented Soprano";
    out.singer.voice = VoiceType::soprano;
    auto const add = [&](char const* ipa, double r1, double r2) {
        out.singer.vowels.push_back({.vowel = parse_ipa(ipa),
                                     .r1 = resonance_of(r1, 30),
                                     .r2 = resonance_of(r2, 80),
                                     .r3 = {},
                                     .r4 = {},
                                     .origin = {}});
    };
    add("i", 360, 2600);
    add("a", 850, 1400);
    double start = 0;
    for (auto const* pitch : {"A4", "C#5", "E5", "A5", "A5"}) {
        auto const spelled = parse_spelled_pitch(pitch);
        bool const last = out.passage.notes.size() == 4;
        SungNote note{.pitch = out.passage.tuning.pitch(spelled),
                      .spelled = spelled,
                      .measure = "1",
                      .beat = 1 + start,
                      .start = seconds(start),
                      .length = seconds(1),
                      .syllables = {{last ? "mi" : "la", Syllable::Part::single}},
                      .typed_ipa = {},
                      .dynamic = {},
                      .vowel = SungVowel{.held = parse_ipa(last ? "i" : "a"), .before = {}, .after = {}}};
        out.passage.notes.push_back(note);
        start += 1;
    }
    return out;
}

double at(NoteExplanation const& e, ShapeExplained const& shape, Frequency f) {
    double const step = in_hertz(e.grid[1] - e.grid[0]), place = in_hertz(f - e.grid[0]) / step;
    auto const i = std::min(static_cast<std::size_t>(place), e.grid.size() - 2);
    double const share = place - static_cast<double>(i);
    return shape.curve[i].value * (1 - share) + shape.curve[i + 1].value * share;
}

} // namespace

TEST_CASE("the decision explained is the plan's, on every note") {
    auto const plan = make_plan(arpeggio());
    for (std::size_t i = 0; i < plan.notes.size(); ++i) {
        CAPTURE(i);
        auto const e = explain_note(arpeggio(), i);
        auto const& d = *plan.notes[i].decision;
        CHECK(e.decision.advice == d.advice);
        CHECK(e.decision.why == d.why);
        CHECK(e.decision.brief == d.brief);
        CHECK(e.decision.certainty == d.certainty);
        CHECK(e.decision.gain.value == d.gain.value);
        CHECK(e.decision.target.r1.centre == d.target.r1.centre);
        CHECK(e.decision.target.r2.centre == d.target.r2.centre);
        CHECK(e.decision.heard.vowel == d.heard.vowel);
        CHECK(e.shares.of(d.advice) == doctest::Approx(d.certainty));
        CHECK(e.shares.hold + e.shares.migrate + e.shares.modify == doctest::Approx(1));
        CHECK(e.changed.has_value() == (d.advice == Advice::modify));
    }
}

TEST_CASE("the changed shape costs no more than the kept one, the neighbours being as they are") {
    // What minimises a sum over the whole course cannot be bettered by one note alone (Bellman 1957).
    int changed = 0;
    for (std::size_t i = 0; i < 5; ++i) {
        auto request = arpeggio();
        request.draws = 0; // the best course for the vowels as measured; draws may decide otherwise
        auto const e = explain_note(std::move(request), i);
        if (!e.changed) continue;
        ++changed;
        CAPTURE(i);
        CHECK(e.changed->cost.total() <= e.kept.cost.total() + 1e-3);
        CHECK(e.kept.cost.effort == 0);
        CHECK(e.changed->cost.effort > 0);
        CHECK(e.changed->cost.attention > 0);
    }
    REQUIRE(changed > 0);
}

TEST_CASE("a high close vowel gains where its raised fR1 meets the harmonic") {
    auto const e = explain_note(arpeggio(), 4);
    REQUIRE(e.changed);
    auto const& d = e.decision;
    REQUIRE(std::abs(d.gain.value) > 1);
    auto const nearest = std::ranges::min_element(e.harmonics, {}, [&](Frequency const& f) {
        return std::abs(interval(e.changed->r1.centre, f).value);
    });
    auto const n = static_cast<std::size_t>(nearest - e.harmonics.begin());
    CHECK((e.changed->harmonics[n] - e.kept.harmonics[n]).value * d.gain.value > 0);
    // Sopranos raise fR1 to fo there (Sundberg 1975, Garnier et al. 2010).
    CHECK(e.changed->r1.centre > 1.5 * e.kept.r1.centre);
}

TEST_CASE("harmonics are the source through the curve: their difference is the curves' difference") {
    auto const e = explain_note(arpeggio(), 4);
    REQUIRE(e.changed);
    REQUIRE(e.harmonics.size() == 5); // 880 Hz, up to 5 kHz
    for (std::size_t i = 0; i < e.harmonics.size(); ++i) {
        CAPTURE(i);
        CHECK(in_hertz(e.harmonics[i]) == doctest::Approx(880.0 * static_cast<double>(i + 1)));
        double const curves = at(e, *e.changed, e.harmonics[i]) - at(e, e.kept, e.harmonics[i]);
        CHECK((e.changed->harmonics[i] - e.kept.harmonics[i]).value == doctest::Approx(curves).epsilon(0.02));
    }
}

TEST_CASE("the model tracts have the resonances they are drawn for") {
    auto const e = explain_note(arpeggio(), 4);
    REQUIRE(e.changed);
    auto const kept = resonances(e.kept.tract), changed = resonances(e.changed->tract);
    REQUIRE(kept.size() >= 2);
    REQUIRE(changed.size() >= 2);
    // Ratios, as the reachable set has them; a cell between four shapes is their mean: a tenth.
    CHECK(changed[0].centre / kept[0].centre ==
          doctest::Approx(double(e.changed->r1.centre / e.kept.r1.centre)).epsilon(0.1));
    CHECK(changed[1].centre / kept[1].centre ==
          doctest::Approx(double(e.changed->r2.centre / e.kept.r2.centre)).epsilon(0.1));
}

TEST_CASE("a note without a vowel has nothing to explain") {
    auto request = arpeggio();
    request.passage.notes[1].vowel.reset();
    CHECK_THROWS_AS(explain_note(request, 1), InputError);
    CHECK_THROWS_AS(explain_note(request, 9), std::out_of_range);
    CHECK(explain_note(request, 2).note.pitch == request.passage.notes[2].pitch);
}

TEST_CASE("what was not chosen is shown beside hold and migrate, and costs more") {
    auto const plan = make_plan(arpeggio());
    int shown = 0;
    for (std::size_t i = 0; i < plan.notes.size(); ++i) {
        auto const e = explain_note(arpeggio(), i);
        CHECK(e.not_chosen.has_value() == (e.decision.advice != Advice::modify));
        if (!e.not_chosen) continue;
        ++shown;
        CHECK(e.not_chosen->cost.total() > e.kept.cost.total());
        CHECK(std::abs(interval(e.vowel.r1.centre, e.not_chosen->r1.centre).value) +
                  std::abs(interval(e.vowel.r2.centre, e.not_chosen->r2.centre).value) >
              50);
    }
    CHECK(shown > 0);
}

TEST_CASE("a tract length that was typed is kept") {
    auto request = arpeggio();
    request.singer.tract_length = centimetres(15.6); // 1.5 cm longer than her resonances say
    auto const e = explain_note(request, 0);
    CHECK(in_centimetres(length_of(e.kept.tract)) == doctest::Approx(15.6).epsilon(0.001));
}

TEST_CASE("of many draws every one decides on the notes, and fifty on the strips") {
    auto request = arpeggio();
    request.draws = 200;
    auto const plan = make_plan(request);
    for (std::size_t i = 0; i < plan.notes.size(); ++i) {
        auto const& d = *plan.notes[i].decision;
        auto const e = explain_note(request, i);
        CHECK(e.draws == 200);
        CHECK(e.shares.of(d.advice) == doctest::Approx(d.certainty));
        double const of_200 = d.certainty * 200;
        CHECK(of_200 == doctest::Approx(std::round(of_200)));
    }
    for (auto const& vowel : plan.vowels)
        for (auto const& cell : vowel.strip) {
            double const of_50 = cell.decision.certainty * 50;
            CHECK(of_50 == doctest::Approx(std::round(of_50)));
        }
}
