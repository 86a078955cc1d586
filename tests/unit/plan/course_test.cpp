// SPDX-License-Identifier: MIT
// The optimiser against brute force: the definition of the minimum is the outside truth here.
#include "plan/course.hpp"

#include <doctest/doctest.h>

#include <random>

using namespace vowelway;
using namespace vowelway::plan;

namespace {

double cheapest_by_brute_force(ShapeGrid const& grid, std::vector<CourseNote> const& notes) {
    std::vector<std::size_t> course(notes.size(), 0);
    double best = 1e300;
    for (;;) {
        best = std::min(best, cost_of_course(grid, notes, course));
        std::size_t n = 0;
        while (n < course.size() && ++course[n] == grid.size()) course[n++] = 0;
        if (n == course.size()) return best;
    }
}

} // namespace

TEST_CASE("the course found is the cheapest of all courses, on 300 random passages") {
    ShapeGrid const grid{-1, 2, -1, 1}; // 12 shapes, 4 notes: 20736 courses each
    std::mt19937 random(7);
    std::uniform_real_distribution<float> cost(0, 1), step(0, 0.4f);
    for (int round = 0; round < 300; ++round) {
        CAPTURE(round);
        std::vector<ShapeCosts> heard(4, ShapeCosts(grid.size())), fixed = heard;
        std::vector<CourseNote> notes;
        for (std::size_t n = 0; n < 4; ++n) {
            for (auto& c : heard[n]) c = cost(random);
            for (auto& c : fixed[n]) c = cost(random) < 0.15f ? out_of_reach : cost(random);
            fixed[n][grid.home()] = cost(random); // home is always in reach
            notes.push_back({&heard[n],
                             &fixed[n],
                             cost(random),
                             {step(random), step(random), step(random), 0, 0, step(random)}});
            auto& way = notes.back().step;
            way.change = step(random);
            way.stay = way.change * cost(random);
        }
        auto const course = best_course(grid, notes);
        CHECK(cost_of_course(grid, notes, course) ==
              doctest::Approx(cheapest_by_brute_force(grid, notes)).epsilon(1e-4));
    }
}

TEST_CASE("nothing to gain: the course stays at home, whatever the step costs") {
    ShapeGrid const grid;
    ShapeCosts const flat(grid.size(), 0.5f);
    for (float step : {0.0f, 0.1f}) {
        std::vector<CourseNote> const notes(50, CourseNote{&flat, &flat, 1, {step, step}});
        for (auto s : best_course(grid, notes)) CHECK(s == grid.home());
    }
}

TEST_CASE("a single expensive home among many: moving is weighed against staying") {
    ShapeGrid const grid{-2, 2, 0, 0};
    ShapeCosts const nothing(grid.size(), 0.0f);
    ShapeCosts flat(grid.size(), 1.0f), high(grid.size(), 1.0f);
    flat[grid.home()] = 0;
    high[grid.at(2, 0)] = 0;
    auto const passage = [&](float step, float length) {
        std::vector<CourseNote> notes;
        for (auto const* heard : {&flat, &high, &flat}) notes.push_back({heard, &nothing, length, {step, 0}});
        return notes;
    };
    CHECK(best_course(grid, passage(0.2f, 1))[1] ==
          grid.at(2, 0)); // 4 semitones there and back cost 0.8, staying costs 1
    CHECK(best_course(grid, passage(0.3f, 1))[1] == grid.home());    // 1.2 against 1
    CHECK(best_course(grid, passage(0.2f, 0.5f))[1] == grid.home()); // a short note is not worth the way
}

TEST_CASE("attention is paid for leaving home, not for staying: a run of notes is worth what one is not") {
    ShapeGrid const grid{-2, 2, 0, 0};
    ShapeCosts const nothing(grid.size(), 0.0f);
    ShapeCosts high(grid.size(), 0.4f);
    high[grid.at(2, 0)] = 0;
    CourseNote const note{
        &high, &nothing, 1, {0, 0, 1, 0.5f, 0.1f, 2}}; // saves 0.4; leaving costs 1, holding 0.1
    for (std::size_t length : {std::size_t{2}, std::size_t{3}, std::size_t{5}}) {
        auto const course = best_course(grid, std::vector<CourseNote>(length, note));
        // 0.4 n against 1 + 0.1 (n - 1)
        CHECK(course.front() == (length > 3 ? grid.at(2, 0) : grid.home()));
    }
    CHECK(step_cost(grid, note.step, grid.home(), grid.at(2, 0)) == doctest::Approx(1));
    CHECK(step_cost(grid, note.step, grid.home(), grid.at(-2, 0)) == doctest::Approx(2));
    CHECK(step_cost(grid, note.step, grid.at(1, 0), grid.at(2, 0)) == doctest::Approx(0.5));
    CHECK(step_cost(grid, note.step, grid.at(2, 0), grid.home()) == doctest::Approx(0));
}
