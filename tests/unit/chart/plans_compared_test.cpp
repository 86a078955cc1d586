// SPDX-License-Identifier: MIT
// Two plans on one sheet: nothing leaves the page, no label covers another, and each difference to speak of
// is numbered on the staff.
#include "support/fixed_measurer.hpp"
#include "support/page_checks.hpp"
#include "support/sample_plan.hpp"
#include "vowelway/chart/draw_plans.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace vowelway;

namespace {

plan::PlansCompared compared(double scale) {
    auto const plan = [](double by, char const* name) {
        plan::PlanRequest request;
        request.singer = sample::singer();
        request.singer.name = name;
        for (auto& v : request.singer.vowels)
            for (auto* r : {&v.r1, &v.r2}) r->centre *= by;
        request.passage = sample::song();
        request.draws = 4;
        return make_plan(std::move(request));
    };
    return compare_plans(plan(1, "Ottavio Brandt"),
                         plan(scale, "Celio Amaranti, who has a rather long name for a tenor"));
}

} // namespace

TEST_CASE("two plans on one sheet: no label overlaps another or leaves the page") {
    auto const fonts = chart::chart_fonts();
    sample::FixedMeasurer const fixed;
    for (double const scale : {1.0, 1.15, 1.4}) {
        auto const c = compared(scale);
        for (auto const paper : {chart::Paper::a4, chart::Paper::letter, chart::Paper::tablet})
            for (double const size : {1.0, 1.25})
                for (auto const* measurer : {static_cast<chart::TextMeasurer const*>(fonts.get()),
                                             static_cast<chart::TextMeasurer const*>(&fixed)}) {
                    CAPTURE(scale);
                    CAPTURE(std::string(to_string(paper)));
                    CAPTURE(size);
                    chart::ChartOptions options;
                    options.paper = paper;
                    options.theme.size = size;
                    for (auto const& page : chart::lay_out(c, options, *measurer))
                        for (auto const& fault : sample::faults(page)) FAIL_CHECK(fault);
                }
    }
}

TEST_CASE("a number in the table is a number on the staff, and both singers stand at every lane") {
    auto const c = compared(1.3);
    auto const pages = chart::lay_out(c, {}, sample::FixedMeasurer{});
    auto const said = [&](std::string_view text) {
        std::ptrdiff_t count = 0;
        for (auto const& page : pages) {
            auto const marks = page.drawing.marks();
            count += std::ranges::count_if(marks, [&](auto const& m) { return m.text == text; });
        }
        return count;
    };
    auto const parting =
        std::ranges::count_if(c.notes, [](plan::ComparedNote const& n) { return n.weight > 0; });
    REQUIRE(parting > 0);
    CHECK(said("1") >= 2);
    CHECK(said("Ottavio Brandt") >= 2);
    auto const alike = chart::lay_out(compared(1.0), {}, sample::FixedMeasurer{});
    auto const marks = alike.front().drawing.marks();
    CHECK(std::ranges::any_of(marks, [](auto const& m) {
        return m.text == "Nowhere with certainty: both can sing it the same way.";
    }));
}
