// SPDX-License-Identifier: MIT
// The pencil view: little on the page, and large.
#include "support/fixed_measurer.hpp"
#include "support/page_checks.hpp"
#include "support/sample_plan.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/plan/pencil.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace vowelway;

namespace {

std::vector<chart::Page> view(plan::Plan const& plan, chart::Paper paper = chart::Paper::a4,
                              double size = 1) {
    Theme theme;
    theme.size = size;
    return chart::lay_out(plan, {.paper = paper, .kind = chart::Kind::pencil, .theme = theme},
                          sample::FixedMeasurer{});
}

std::string words_of(std::vector<chart::Page> const& pages) {
    std::string out;
    for (auto const& page : pages)
        for (auto const& mark : page.drawing.marks()) out += std::string(mark.text) + "\n";
    return out;
}

/// Height of the first staff's lines: four spaces.
double staff_height(chart::Page const& page) {
    for (auto const& m : page.drawing.marks())
        if (m.kind == chart::Drawing::Mark::Kind::music) return m.box.height;
    return 0;
}

} // namespace

TEST_CASE("the pencil view says what is pencilled and speaks of no resonances") {
    auto const plan = sample::song_plan();
    auto const text = words_of(view(plan));
    for (auto const& mark : plan::pencil_of(plan).marks)
        if (!mark.words.empty()) CHECK(text.find(mark.words) != std::string::npos);
    CHECK(text.find("Sera di prova") != std::string::npos);
    CHECK(text.find(summary_of(plan, plan::pencil_of(plan))) != std::string::npos);
    for (char const* number : {"fR1", "2fo", "heard"}) CHECK(text.find(number) == std::string::npos);
}

TEST_CASE("its staff is larger than that of the sheet, and the sheet follows it") {
    auto const plan = sample::song_plan();
    auto const sheet = chart::lay_out(plan, {.kind = chart::Kind::passage_sheet}, sample::FixedMeasurer{});
    CHECK(staff_height(view(plan).front()) > 1.15 * staff_height(sheet.front()));
    auto const all = chart::lay_out(plan, {}, sample::FixedMeasurer{});
    CHECK(all.front().drawing.strokes() == view(plan).front().drawing.strokes());
    CHECK(all.size() > view(plan).size() + sheet.size());
}

TEST_CASE("at every size no label overlaps another or leaves the page") {
    for (auto const paper : {chart::Paper::a4, chart::Paper::letter, chart::Paper::tablet})
        for (double const size : {1.0, 1.3, Theme::largest_size})
            for (auto const& page : view(sample::song_plan(), paper, size))
                for (auto const& fault : sample::faults(page)) FAIL_CHECK(fault);
}

TEST_CASE("a range has no pencil view") { CHECK_THROWS_AS(view(sample::range_plan()), InputError); }
