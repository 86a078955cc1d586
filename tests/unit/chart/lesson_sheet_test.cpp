// SPDX-License-Identifier: MIT
// The lesson sheet: one page, whatever the paper.
#include "support/fixed_measurer.hpp"
#include "support/page_checks.hpp"
#include "support/sample_plan.hpp"
#include "vowelway/chart/draw_lesson.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace vowelway;

TEST_CASE("a lesson is one page at every size, without overlaps, with all of its exercises") {
    auto const lesson = plan::lesson_of(sample::song_plan());
    REQUIRE(!lesson.exercises.empty());
    for (auto const paper : {chart::Paper::a4, chart::Paper::letter, chart::Paper::tablet})
        for (double const size : {1.0, 1.3, Theme::largest_size}) {
            Theme theme;
            theme.size = size;
            auto const pages =
                chart::lay_out(lesson, {.paper = paper, .theme = theme}, sample::FixedMeasurer{});
            REQUIRE(pages.size() == 1);
            for (auto const& fault : sample::faults(pages[0])) FAIL_CHECK(fault);
            std::string text;
            for (auto const& mark : pages[0].drawing.marks()) text += std::string(mark.text) + "\n";
            CHECK(text.find("Order of practice") != std::string::npos);
            for (std::size_t i = 0; i < lesson.exercises.size(); ++i)
                CHECK(text.find("\n" + std::string(1, static_cast<char>('a' + i)) + "\n") !=
                      std::string::npos);
        }
}
