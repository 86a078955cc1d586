// SPDX-License-Identifier: MIT
// The optimiser against brute force: the definition of the minimum is the outside truth here.
#include "plan/course.hpp"

#include <doctest/doctest.h>

#include <random>

using namespace vowelway;

namespace {

double cheapest_by_brute_force(ShapeGrid const& grid, std::vector<ShapeCosts const*> const& costs, std::vector<StepCost> const& steps) {
    std::vector<std::size_t> course(costs.size(), 0);
    double best = 1e300;
    for (;;) {
        best = std::min(best, cost_of_course(grid, costs, steps, course));
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
        std::vector<ShapeCosts> tables(4, ShapeCosts(grid.size()));
        std::vector<ShapeCosts const*> costs;
        std::vector<StepCost> steps;
        for (auto& table : tables) {
            for (auto& c : table) c = cost(random) < 0.15f ? out_of_reach : cost(random);
            table[grid.home()] = cost(random); // home is always in reach
            costs.push_back(&table);
            steps.push_back({step(random), step(random)});
        }
        auto const course = best_course(grid, costs, steps);
        CHECK(cost_of_course(grid, costs, steps, course) == doctest::Approx(cheapest_by_brute_force(grid, costs, steps)).epsilon(1e-4));
    }
}

TEST_CASE("nothing to gain: the course stays at home, whatever the step costs") {
    ShapeGrid const grid;
    ShapeCosts const flat(grid.size(), 0.5f);
    std::vector<ShapeCosts const*> const costs(50, &flat);
    for (float step : {0.0f, 0.1f}) {
        std::vector<StepCost> const steps(50, StepCost{step, step});
        for (auto s : best_course(grid, costs, steps)) CHECK(s == grid.home());
    }
}

TEST_CASE("a single expensive home among many: moving is weighed against staying") {
    ShapeGrid const grid{-2, 2, 0, 0};
    ShapeCosts flat(grid.size(), 1.0f), high(grid.size(), 1.0f);
    flat[grid.home()] = 0;
    high[grid.at(2, 0)] = 0;
    std::vector<ShapeCosts const*> const costs{&flat, &high, &flat};
    auto const moves = best_course(grid, costs, std::vector<StepCost>(3, StepCost{0.2f, 0}));
    CHECK(moves[1] == grid.at(2, 0)); // 4 semitones there and back cost 0.8, staying costs 1
    auto const stays = best_course(grid, costs, std::vector<StepCost>(3, StepCost{0.3f, 0}));
    CHECK(stays[1] == grid.home()); // 1.2 against 1
}
