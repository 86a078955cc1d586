// SPDX-License-Identifier: MIT
#include "plan/cost.hpp"

#include "plan/objective.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::plan {

namespace {

// All that depends on fR1 alone.
double stability_cost(Pitch fo, Frequency r1, Technique const& technique) {
    double const first = exposure(r1, interval(r1, fo.frequency()));
    double const second = exposure(r1, interval(r1, 2.0 * fo.frequency()));
    return technique.stability * std::max(first, 0.5 * second);
}

double relation_cost(Pitch fo, Frequency r1, Frequency home_r1, Technique const& technique) {
    double cost = 0;
    for (auto const& wanted : technique.relations) {
        if (wanted.after_turn_only && 2.0 * fo.frequency() <= home_r1) continue;
        if ((wanted.from && fo < *wanted.from) || (wanted.to && fo > *wanted.to)) continue;
        double const above = in_semitones(interval(r1, frequency_of(wanted.harmonic, fo)));
        double const departure = wanted.side == WantedRelation::Side::below_fR1 ? above : -above;
        cost += wanted.weight * std::clamp(departure, 0.0, 12.0);
    }
    return cost;
}

} // namespace

Decibels expected_level(Decibels at_ease, Aim const& aim, Pitch fo) {
    auto const& t = aim.technique;
    double const octaves = (fo - aim.ease_pitch).value / 1200;
    double const upper = std::max(0.0, interval(t.upper_begins, fo.frequency()).value / 1200);
    return at_ease + octaves * t.level_per_octave + upper * (t.upper_level_per_octave - t.level_per_octave);
}

double exposure(Frequency r1, Cents above) {
    double const st = in_semitones(above), band = std::clamp(9 - 9 * std::log2(r1.value() / 300), 2.5, 9.0);
    if (st <= -0.5 || st >= band) return 0;
    if (st < 0.5) return st + 0.5;
    double const middle = std::max(0.5, band / 2);
    return st <= middle ? 1 : (band - st) / (band - middle);
}

double ring_factor(Decibels loudness) { return std::clamp(1 + 0.08 * loudness.value, 0.4, 1.8); }

void fill_heard(ShapeGrid const& grid, Landscape const& land, Home const& home, Aim const& aim,
                ShapeCosts& out) {
    out.resize(grid.size());
    Objective<float> const objective(land, home, aim);
    int const width = grid.width2();
    float* cell = out.data();
    for (int d1 = grid.low1; d1 <= grid.high1; ++d1, cell += width) {
        auto const row = objective.row(d1);
        auto const r1 = home.r1 * std::exp2(d1 / 12.0);
        auto const of_r1 = static_cast<float>(stability_cost(land.pitch(), r1, aim.technique) +
                                              relation_cost(land.pitch(), r1, home.r1, aim.technique));
        // The columns within the landscape without calls or branches, so that they are a few vector
        // instructions.
        int const from = std::clamp(objective.first_d2() - grid.low2, 0, width),
                  to = std::clamp(objective.last_d2() - grid.low2 + 1, 0, width);
        for (int c = from; c < to; ++c) {
            auto const at = row + (grid.low2 + c);
            cell[c] = of_r1 + objective.text(at) + objective.ring(at);
        }
        for (int c = 0; c < from; ++c) cell[c] = from < to ? cell[from] : 0;
        for (int c = to; c < width; ++c) cell[c] = from < to ? cell[to - 1] : 0;
    }
}

HeardCost heard_cost(ShapeGrid const& grid, std::size_t shape, Landscape const& land, Home const& home,
                     Aim const& aim) {
    Objective<double> const objective(land, home, aim);
    auto const at =
        objective.row(grid.d1(shape)) + std::clamp(grid.d2(shape), objective.first_d2(), objective.last_d2());
    auto const r1 = home.r1 * std::exp2(grid.d1(shape) / 12.0);
    return {.text = objective.text(at),
            .ring = objective.ring(at),
            .stability = stability_cost(land.pitch(), r1, aim.technique),
            .relation = relation_cost(land.pitch(), r1, home.r1, aim.technique)};
}

} // namespace vowelway::plan
