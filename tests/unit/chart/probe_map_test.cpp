// SPDX-License-Identifier: MIT
// The map of probes: every probe, target and verdict is on it, nothing leaves it and no label covers another.
#include "support/fixed_measurer.hpp"
#include "support/page_checks.hpp"
#include "support/sample_plan.hpp"
#include "vowelway/chart/draw_probes.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace vowelway;

namespace {

analysis::TractReading tract(double r1, double r2) {
    analysis::TractReading t;
    t.resonances = {sample::resonance(r1, 50), sample::resonance(r2, 60), std::nullopt};
    return t;
}

analysis::MeasuredVowel measured(VowelResonances const& v, double factor, analysis::ProbeKind kind,
                                 int takes) {
    analysis::MeasuredVowel m;
    m.vowel = v.vowel;
    m.kind = kind;
    m.takes = takes;
    m.tract = tract(factor * in_hertz(v.r1.centre), factor * in_hertz(v.r2.centre));
    return m;
}

analysis::Take take(analysis::MeasuredVowel const& v, double factor) {
    analysis::Take t;
    t.vowel = v.vowel;
    t.excitation.kind = v.kind;
    t.tract = tract(factor * in_hertz(v.tract.resonances[0]->centre),
                    factor * in_hertz(v.tract.resonances[1]->centre));
    return t;
}

/// All vowels of the sample singer sung again, `factor` away, each also against a target of a plan.
chart::ProbeMap checked(double factor) {
    chart::ProbeMap p;
    p.reference = sample::singer();
    p.who = "Ottavio Brandt";
    p.due = p.reference.vowels;
    p.date = "2026-11-08";
    p.files = {"lesson.m4a"};
    for (auto const& v : p.reference.vowels) {
        p.vowels.push_back(measured(v, factor, analysis::ProbeKind::creak, 2));
        for (double const each : {0.97, 1.03}) p.takes.push_back(take(p.vowels.back(), each));
        analysis::Checked own;
        own.aim.tract = {v.r1, v.r2, std::nullopt};
        own.comparison = compare_with(p.vowels.back(), own.aim);
        p.checks.push_back(own);
        analysis::Checked target = own;
        target.against = analysis::Checked::Against::plan;
        target.aim.tract[0]->centre *= 1.1;
        target.comparison = compare_with(p.vowels.back(), target.aim);
        target.shade = v.vowel.ipa() + "\u031e";
        target.bars = {"2", "4", "7", "12", "31"};
        p.checks.push_back(target);
    }
    return p;
}

int times_said(chart::Page const& page, std::string_view text) {
    auto const marks = page.drawing.marks();
    return static_cast<int>(std::ranges::count_if(marks, [&](auto const& m) { return m.text == text; }));
}

} // namespace

TEST_CASE("a map of probes: no label overlaps another or leaves the page") {
    auto const fonts = chart::chart_fonts();
    sample::FixedMeasurer const fixed;
    for (double const factor : {0.7, 0.9, 1.0, 1.05, 1.6})
        for (bool const check : {true, false})
            for (auto const paper : {chart::Paper::a4, chart::Paper::letter, chart::Paper::tablet})
                for (auto const* measurer : {static_cast<chart::TextMeasurer const*>(fonts.get()),
                                             static_cast<chart::TextMeasurer const*>(&fixed)}) {
                    auto p = checked(factor);
                    if (!check) p.checks.clear();
                    CAPTURE(factor);
                    CAPTURE(check);
                    CAPTURE(std::string(to_string(paper)));
                    chart::ChartOptions options;
                    options.paper = paper;
                    auto const pages = chart::lay_out(p, options, *measurer);
                    REQUIRE(pages.size() == 1);
                    for (auto const& fault : sample::faults(pages.front())) FAIL_CHECK(fault);
                }
}

TEST_CASE("every vowel is named on the map, every target too, and every verdict stands in the table") {
    sample::FixedMeasurer const fixed;
    for (double const factor : {0.8, 1.0}) {
        CAPTURE(factor);
        auto const p = checked(factor);
        auto const page = chart::lay_out(p, {}, fixed).front();
        for (auto const& v : p.due) {
            CAPTURE(v.vowel.ipa());
            CHECK(times_said(page, v.vowel.ipa()) >= 1);
            CHECK(times_said(page, v.vowel.ipa() + "\u031e") == 1);
        }
        for (auto const verdict :
             {analysis::Verdict::there, analysis::Verdict::unclear, analysis::Verdict::moved}) {
            auto const expected = std::ranges::count_if(
                p.checks, [&](analysis::Checked const& c) { return c.comparison.verdict == verdict; });
            CHECK(times_said(page, to_string(verdict)) == expected);
        }
        CHECK(times_said(page, "Vowels checked") == 1);
        CHECK(times_said(page, "Ottavio Brandt, tenor") == 1);
    }
}

TEST_CASE("a check too long for a page says how much is left out") {
    auto p = checked(1.0);
    auto const twice = p.checks;
    p.checks.insert(p.checks.end(), twice.begin(), twice.end());
    auto const page = chart::lay_out(p, {}, sample::FixedMeasurer{}).front();
    CHECK(times_said(page, "and 12 more, in the table form") == 1);
}

TEST_CASE("nothing measured is no chart") {
    chart::ProbeMap p;
    p.reference = sample::singer();
    CHECK_THROWS_AS(chart::lay_out(p, {}, sample::FixedMeasurer{}), InputError);
}
