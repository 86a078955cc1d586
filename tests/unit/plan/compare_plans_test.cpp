// SPDX-License-Identifier: MIT
// Two singers' plans of one song. Checked by what the values must satisfy whatever the planner decides.
#include "vowelway/plan/compare_plans.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

using namespace vowelway;
using namespace vowelway::plan;

namespace {

Singer singer(std::string name, double scale, double sd_share = 0.05) {
    Singer s;
    s.name = std::move(name);
    s.voice = VoiceType::tenor;
    struct Row {
        char const* vowel;
        double r1, r2;
    };
    for (auto const& row : {Row{"i", 300, 2180}, Row{"a", 700, 1240}, Row{"u", 330, 700}}) {
        VowelResonances v;
        v.vowel = parse_vowel(row.vowel);
        v.r1 = {hertz(scale * row.r1), hertz(sd_share * scale * row.r1), false, {}};
        v.r2 = {hertz(scale * row.r2), hertz(0.03 * scale * row.r2), false, {}};
        s.vowels.push_back(v);
    }
    return s;
}

/// A scale on each vowel, one second a note.
Passage scale_of(char const* low = "C4", int notes = 12) {
    Passage p;
    for (auto const* vowel : {"i", "a", "u"})
        for (int k = 0; k < notes; ++k) {
            auto const pitch = p.tuning.pitch(parse_spelled_pitch(low)) + semitones(k);
            SungNote const n{pitch,
                             p.tuning.name(pitch).pitch,
                             std::to_string(p.notes.size() + 1),
                             1,
                             seconds(static_cast<double>(p.notes.size())),
                             seconds(1),
                             false,
                             false,
                             {},
                             std::nullopt,
                             std::nullopt,
                             SungVowel{.held = parse_vowel(vowel), .before = {}, .after = {}},
                             false};
            p.notes.push_back(n);
        }
    return p;
}

Plan plan_for(Singer s, Passage p = scale_of()) {
    PlanRequest request;
    request.singer = std::move(s);
    request.passage = std::move(p);
    request.draws = 20;
    return make_plan(std::move(request));
}

} // namespace

TEST_CASE("a singer and the same singer part nowhere") {
    auto const c = compare_plans(plan_for(singer("A", 1)), plan_for(singer("B", 1)));
    CHECK(c.notes.size() == 36);
    for (auto const& n : c.notes) CHECK(n.parting == Parting::none);
    CHECK(in_seconds(c.parting) == 0);
    CHECK(in_seconds(c.times[0].all()) == doctest::Approx(36));
    for (std::size_t k = 0; k < 3; ++k)
        CHECK(in_seconds(c.times[0].of[k]) == doctest::Approx(in_seconds(c.times[1].of[k])));
}

TEST_CASE("tracts of different length part, the longer one turns lower and is the one that has turned") {
    // All resonances of a tube go as 1 / length (Stevens 1998): a fifth shorter, a minor third and a half
    // higher, and so all turning points.
    auto const c = compare_plans(plan_for(singer("long", 1, 0.02)), plan_for(singer("short", 1.25, 0.02)));
    auto const interval_of_turning = [&](std::size_t v) {
        return (c.plans[1].vowels[v].turning.pitch - c.plans[0].vowels[v].turning.pitch).value;
    };
    for (std::size_t v = 0; v < 3; ++v)
        CHECK(interval_of_turning(v) == doctest::Approx(1200 * std::log2(1.25)));
    int sounds = 0, advices = 0;
    for (auto const& n : c.notes) {
        auto const &a = *c.plans[0].notes[n.note].decision, &b = *c.plans[1].notes[n.note].decision;
        CHECK((n.parting == Parting::advice) == (a.advice != b.advice));
        CHECK(n.certainty >= 0);
        CHECK(n.certainty <= 1);
        if (n.parting == Parting::advice) {
            ++advices;
            CHECK(n.certainty == doctest::Approx(a.certainty * b.certainty));
        }
        if (n.parting != Parting::sound) continue;
        ++sounds;
        CHECK(a.zone.p_turned > 0.95);
        CHECK(b.zone.p_turned < 0.05);
        CHECK(n.certainty > 0.9);
    }
    CHECK(advices > 0);
    CHECK(sounds + advices > 1);
    CHECK(c.surely_parting <= c.parting);
    CHECK(c.parting <= c.times[0].all());
}

TEST_CASE("a way is an interval from the own vowel, and there only when the shape is changed") {
    auto const c =
        compare_plans(plan_for(singer("A", 1), scale_of("A4")), plan_for(singer("B", 1.1), scale_of("A4")));
    int changed = 0;
    for (auto const& n : c.notes)
        for (std::size_t s = 0; s < 2; ++s) {
            auto const& planned = c.plans[s].notes[n.note];
            if (planned.decision->advice != Advice::modify) {
                CHECK(n.way[s][0].value == 0);
                continue;
            }
            ++changed;
            auto const own = in_hertz(c.plans[s].vowels[*planned.vowel].resonances.r1.centre);
            CHECK(in_hertz(planned.decision->target.r1.centre) ==
                  doctest::Approx(own * std::exp2(n.way[s][0].value / 1200)));
        }
    CHECK(changed > 0);
}

TEST_CASE("each singer may sing the line in an octave of their own, and that is said") {
    auto const c = compare_plans(plan_for(singer("one", 1)), plan_for(singer("two", 1), scale_of("C3")));
    REQUIRE_FALSE(c.remarks.empty());
    CHECK(c.remarks[0].text == "pitches are those of one; two sings an octave lower");
    CHECK(compare_plans(plan_for(singer("one", 1)), plan_for(singer("two", 1), scale_of("C5")))
              .remarks[0]
              .text == "pitches are those of one; two sings an octave higher");
    CHECK(c.notes.size() == scale_of().notes.size());
}

TEST_CASE("plans of different notes, vowels or keys are not compared") {
    CHECK_THROWS_AS(compare_plans(plan_for(singer("A", 1)), plan_for(singer("B", 1), scale_of("D4"))),
                    InputError);
    CHECK_THROWS_AS(compare_plans(plan_for(singer("A", 1)), plan_for(singer("B", 1), scale_of("C4", 11))),
                    InputError);
    auto other = scale_of();
    other.notes[3].vowel->held = parse_vowel("a");
    CHECK_THROWS_AS(compare_plans(plan_for(singer("A", 1)), plan_for(singer("B", 1), other)), InputError);
}
