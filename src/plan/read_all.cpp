// SPDX-License-Identifier: MIT
#include "plan/read_all.hpp"

#include "core/ranges.hpp"
#include "plan/reading.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <functional>

namespace vowelway::plan {

namespace {

// What a step to a note costs: the way, and the attention.
struct Steps {
    double line = 0, attention = 0;
};

Steps step_between(Decided const& decided, std::size_t to, std::size_t from_shape, std::size_t to_shape) {
    auto const& grid = decided.strategy.grid();
    auto const cost = decided.strategy.step_cost(decided.work.tasks[to]);
    StepCost const way{cost.per_r1, cost.per_r2};
    double const line = step_cost(grid, way, from_shape, to_shape);
    return {line, step_cost(grid, cost, from_shape, to_shape) - line};
}

// The names given on a strip, in the order of its pitches.
struct Names {
    std::vector<Pitch> pitches;
    std::vector<Vowel> heard, kept;
    // The index nearest to a pitch.
    std::size_t near(Pitch pitch) const {
        auto const at =
            ranges::min_element(pitches, std::less<>{}, [&](Pitch p) { return std::abs((p - pitch).value); });
        return static_cast<std::size_t>(at - pitches.begin());
    }
};

} // namespace

double AdviceShares::of(Advice advice) const {
    switch (advice) {
    case Advice::hold:
        return hold;
    case Advice::migrate:
        return migrate;
    case Advice::modify:
        return modify;
    }
    return 0;
}

CostTerms cost_beside(Decided const& decided, std::size_t index, std::size_t shape, bool with_next) {
    auto const& strategy = decided.strategy;
    auto const& task = decided.work.tasks[index];
    auto const heard = strategy.cost_of(task, shape);
    double const benefit = Strategy::benefit(task.length);
    CostTerms out{.text = benefit * heard.text,
                  .ring = benefit * heard.ring,
                  .stability = benefit * heard.stability,
                  .relation = benefit * heard.relation};
    out.effort = double{strategy.models()[task.vowel].efforts[shape]};
    auto const before = index > 0 ? decided.choices[index - 1].shape : strategy.grid().home();
    auto add = [&](Steps const& step) {
        out.line += step.line;
        out.attention += step.attention;
    };
    add(step_between(decided, index, before, shape));
    if (with_next && index + 1 < decided.choices.size())
        add(step_between(decided, index + 1, shape, decided.choices[index + 1].shape));
    return out;
}

std::vector<Decision> read_all(Decided const& decided) {
    auto const& strategy = decided.strategy;
    auto const& tasks = decided.work.tasks;
    std::vector<Names> names(strategy.models().size());
    std::vector<Decision> out;
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        auto const& task = tasks[i];
        auto& named = names[task.vowel];
        bool const strip = i < decided.work.strips();
        Beside beside{.turning = decided.plan.vowels[task.vowel].turning.pitch,
                      .from = {},
                      .cost_kept = cost_beside(decided, i, strategy.grid().home()),
                      .cost_planned = cost_beside(decided, i, decided.choices[i].shape)};
        if (strip) {
            if (!named.pitches.empty()) {
                beside.from = named.pitches.back();
                beside.heard = &named.heard.back();
                beside.kept = &named.kept.back();
            }
        } else {
            auto const at = named.near(task.pitch);
            beside.heard = &named.heard[at];
            beside.kept = &named.kept[at];
            if (i > decided.work.strips()) beside.from = tasks[i - 1].pitch;
        }
        out.push_back(read_decision(strategy, task, decided.choices[i], beside));
        if (strip) {
            named.pitches.push_back(task.pitch);
            named.heard.push_back(out.back().heard.vowel);
            named.kept.push_back(out.back().heard_kept.vowel);
        }
    }
    return out;
}

} // namespace vowelway::plan
