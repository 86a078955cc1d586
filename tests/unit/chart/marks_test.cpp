// SPDX-License-Identifier: MIT
#include "chart/canvas/label_placer.hpp"
#include "chart/page/marks.hpp"
#include "support/fixed_measurer.hpp"
#include "vowelway/chart/drawing.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::chart;

TEST_CASE("textures stay inside their box, and no two zones look alike") {
    sample::FixedMeasurer const fixed;
    Box const box{10.3, 20.7, 33, 17};
    std::vector<std::string> looks;
    for (auto const zone : plan::all_zones) {
        Drawing d(fixed);
        fill_zone(d, box, {zone, 0.5, 0});
        for (auto const& m : d.marks()) {
            CHECK(m.box.left >= box.left - 0.6);
            CHECK(m.box.right() <= box.right() + 0.6);
            CHECK(m.box.top >= box.top - 0.6);
            CHECK(m.box.bottom() <= box.bottom() + 0.6);
        }
        looks.push_back(d.strokes());
    }
    for (std::size_t i = 0; i < looks.size(); ++i)
        for (std::size_t j = i + 1; j < looks.size(); ++j) CHECK(looks[i] != looks[j]);
}

TEST_CASE("the signs of the advice differ in shape, not in colour alone") {
    sample::FixedMeasurer const fixed;
    std::vector<std::string> looks;
    for (auto const advice : {plan::Advice::hold, plan::Advice::migrate, plan::Advice::modify}) {
        Drawing d(fixed);
        advice_sign(d, {0, 0}, 8, advice);
        auto look = d.strokes();
        auto const ink = look.find(' '); // the second word of the line
        look.erase(ink, look.find(' ', ink + 1) - ink);
        looks.push_back(look);
    }
    CHECK(looks[0] != looks[1]);
    CHECK(looks[1] != looks[2]);
    CHECK(looks[0] != looks[2]);
}

TEST_CASE("text is broken at blanks and cut with an ellipsis") {
    sample::FixedMeasurer const fixed;
    TextStyle const ten{.size = 10}; // 5 points a character
    CHECK(wrapped(fixed, "one two three", ten, 40) == std::vector<std::string>{"one two", "three"});
    CHECK(wrapped(fixed, "", ten, 40).empty());
    CHECK(fitted(fixed, "abcdef", ten, 30) == "abcdef");
    CHECK(fitted(fixed, "abcdef", ten, 29) == "abcd…");
    CHECK(fitted(fixed, "éàü", ten, 10) == "é…");
    CHECK(fitted(fixed, "abc", ten, 3).empty());
}

TEST_CASE("labels find the nearest free place or are dropped and counted") {
    LabelPlacer placer({0, 0, 100, 50});
    auto const first = placer.find({10, 20, 30, 10}, 0);
    REQUIRE(first);
    CHECK(first->top == 20);
    auto const second = placer.find({10, 22, 30, 10}, 30);
    REQUIRE(second);
    CHECK_FALSE(second->overlaps(*first));
    CHECK_FALSE(placer.find({10, 20, 30, 10}, 2));
    CHECK(placer.dropped() == 1);
}
