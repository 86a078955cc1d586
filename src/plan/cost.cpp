// SPDX-License-Identifier: MIT
#include "cost.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway {

namespace {

double octaves(Pitch from, Pitch to) { return (to - from).value / 1200; }

// All that depends on fR1 alone.
double stability_cost(Pitch fo, Frequency r1, Technique const& technique) {
    double const first = exposure(interval(r1, fo.frequency()));
    double const second = exposure(interval(r1, 2.0 * fo.frequency()));
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

double text_cost(Bark distance, Technique const& technique) {
    return technique.text * distance.value / (1 + distance.value / technique.text_saturation.value);
}

double ring_cost(Decibels level, Decibels expected, Technique const& technique) {
    return technique.ring * std::max(0.0, (expected - level - technique.ring_tolerance).value);
}

} // namespace

Decibels expected_level(Decibels at_ease, Pitch ease_pitch, Pitch fo) { return at_ease + octaves(ease_pitch, fo) * level_per_octave; }

double exposure(Cents above) {
    double const st = in_semitones(above);
    if (st <= -0.5 || st >= 4) return 0;
    if (st < 0.5) return st + 0.5;
    if (st <= 1.5) return 1;
    return (4 - st) / 2.5;
}

void fill_costs(ShapeGrid const& grid, Landscape const& land, Home const& home, Technique const& technique, Pitch ease_pitch,
                NoteWeights weights, ShapeCosts const& efforts, ShapeCosts& out) {
    out.resize(grid.size());
    auto const base_row = Landscape::row_of(home.r1), base_column = Landscape::column_of(home.r2);
    Decibels const expected = expected_level(home.at_ease, ease_pitch, land.pitch());
    auto const columns = static_cast<std::size_t>(Landscape::columns);
    std::size_t i = 0;
    for (int d1 = grid.low1; d1 <= grid.high1; ++d1) {
        auto const r1 = home.r1 * std::exp2(d1 / 12.0);
        double const heard = static_cast<double>(weights.benefit);
        double const of_r1 = heard * (stability_cost(land.pitch(), r1, technique) + relation_cost(land.pitch(), r1, home.r1, technique));
        // A step of the grid is a step of the lattice: the shares of the blend are the same for every shape.
        auto const row = static_cast<std::size_t>(std::clamp(base_row.step + d1, 0, Landscape::rows - 2)) * columns;
        for (int d2 = grid.low2; d2 <= grid.high2; ++d2, ++i) {
            if (efforts[i] >= out_of_reach) {
                out[i] = out_of_reach;
                continue;
            }
            auto const at = row + static_cast<std::size_t>(std::clamp(base_column.step + d2, 0, Landscape::columns - 2));
            auto const blend = [&](float const* v) {
                float const low = v[at] + base_column.share * (v[at + 1] - v[at]);
                float const high = v[at + columns] + base_column.share * (v[at + columns + 1] - v[at + columns]);
                return double{low + base_row.share * (high - low)};
            };
            Decibels const level{blend(land.levels())};
            HeardPlace const place{{blend(land.opennesses())}, {blend(land.fronts())}};
            double const of_shape = heard * (text_cost(distance(place, home.spoken), technique) +
                                             double{weights.ring} * ring_cost(level, expected, technique));
            out[i] = static_cast<float>(of_shape + of_r1 + technique.effort * double{efforts[i]} + (i == grid.home() ? 0 : technique.attention));
        }
    }
}

CostTerms cost_terms(ShapeGrid const& grid, std::size_t shape, Landscape const& land, Home const& home, Technique const& technique,
                     Pitch ease_pitch, NoteWeights weights, ShapeCosts const& efforts) {
    auto const r1 = home.r1 * std::exp2(grid.d1(shape) / 12.0), r2 = home.r2 * std::exp2(grid.d2(shape) / 12.0);
    auto const sample = land.at(r1, r2);
    double const heard = double{weights.benefit};
    CostTerms terms;
    terms.text = heard * text_cost(distance(sample.heard, home.spoken), technique);
    terms.ring = heard * double{weights.ring} * ring_cost(sample.level, expected_level(home.at_ease, ease_pitch, land.pitch()), technique);
    terms.stability = heard * stability_cost(land.pitch(), r1, technique);
    terms.relation = heard * relation_cost(land.pitch(), r1, home.r1, technique);
    terms.effort = technique.effort * double{efforts[shape]};
    terms.attention = shape == grid.home() ? 0 : technique.attention;
    return terms;
}

} // namespace vowelway
