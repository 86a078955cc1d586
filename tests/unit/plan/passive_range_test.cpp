// SPDX-License-Identifier: MIT
#include "plan/passive_range.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::plan;

namespace {

// h hold, g migrate, x modify; semitones up from 200 Hz.
std::vector<PitchCell> strip(std::string_view advice) {
    std::vector<PitchCell> out;
    for (char c : advice) {
        Decision d;
        d.advice = c == 'h' ? Advice::hold : c == 'g' ? Advice::migrate : Advice::modify;
        out.push_back({Pitch(hertz(200)) + semitones(static_cast<double>(out.size())), d, {}});
    }
    return out;
}

double steps(Pitch p) { return in_semitones(p - Pitch(hertz(200))); }

} // namespace

TEST_CASE("the passive range ends where modifying begins for good") {
    auto const range = passive_range(strip("hhhhggxxxx"), {});
    REQUIRE(range);
    CHECK(steps(range->from) == doctest::Approx(0));
    CHECK(steps(range->to) == doctest::Approx(5));
    REQUIRE(range->migrates_from);
    CHECK(steps(*range->migrates_from) == doctest::Approx(4));
    CHECK_FALSE(range->reaches_top);
}

TEST_CASE("one pitch alone does not end it, two do") {
    CHECK(steps(passive_range(strip("hhhxhhhxx"), {})->to) == doctest::Approx(6));
    CHECK(steps(passive_range(strip("hhhhxxhhx"), {})->to) == doctest::Approx(3));
}

TEST_CASE("all of it, none of it, and a range that begins above the bottom") {
    CHECK(passive_range(strip("hhhh"), {})->reaches_top);
    CHECK_FALSE(passive_range(strip("xxxx"), {}));
    auto const range = passive_range(strip("xxhhhhx"), {});
    CHECK(steps(range->from) == doctest::Approx(2));
}

TEST_CASE("its uncertainty is the scatter of its end over the draws") {
    std::vector<std::vector<Advice>> drawn;
    for (int top : {3, 5, 7}) { // ends 3, 5 and 7 semitones up: a sample deviation of 2
        std::vector<Advice> advice(10, Advice::modify);
        std::fill(advice.begin(), advice.begin() + top, Advice::hold);
        drawn.push_back(advice);
    }
    CHECK(in_semitones(passive_range(strip("hhhhhxxxxx"), drawn)->to_sd) == doctest::Approx(2));
}
