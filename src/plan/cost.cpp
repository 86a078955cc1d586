// SPDX-License-Identifier: MIT
#include "plan/cost.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>

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

double text_cost(Bark distance, Technique const& technique) {
    return technique.text * distance.value / (1 + distance.value / technique.text_saturation.value);
}

double ring_cost(Decibels level, Decibels expected, double factor, Technique const& technique) {
    return technique.ring * factor * std::max(0.0, (expected - level - technique.ring_tolerance).value);
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
    auto const& technique = aim.technique;
    auto const base_row = Landscape::row_of(home.r1), base_column = Landscape::column_of(home.r2);
    // In single precision and without calls, so that a row is a few vector instructions.
    auto const single = [](double v) { return static_cast<float>(v); };
    float const wanted =
        single((expected_level(home.at_ease, aim, land.pitch()) - technique.ring_tolerance).value);
    float const per_decibel = single(technique.ring * ring_factor(land.loudness()));
    float const front_weight = single(acoustics::distance({{0}, {0}}, {{0}, {1}}).value);
    float const openness = single(home.spoken.openness.value), front = single(home.spoken.front.value);
    float const text = single(technique.text), saturation = single(1 / technique.text_saturation.value);
    float const right = base_column.share, up = base_row.share;
    auto const columns = static_cast<std::size_t>(Landscape::columns);
    int const width = grid.width2();
    float* cell = out.data();
    for (int d1 = grid.low1; d1 <= grid.high1; ++d1, cell += width) {
        auto const r1 = home.r1 * std::exp2(d1 / 12.0);
        float const of_r1 = single(stability_cost(land.pitch(), r1, technique) +
                                   relation_cost(land.pitch(), r1, home.r1, technique));
        // A step of the grid is a step of the lattice: the shares of the blend are the same for every shape.
        auto const row =
            static_cast<std::size_t>(std::clamp(base_row.step + d1, 0, Landscape::rows - 2)) * columns;
        int const first = base_column.step + grid.low2;
        int const from = std::clamp(-first, 0, width),
                  to = std::clamp(Landscape::columns - 1 - first, 0, width);
        auto const offset =
            static_cast<std::ptrdiff_t>(row) + first; // may point before the row; from..to never does
        auto const blend = [&](float const* table, int c) {
            float const* const v = table + (offset + c);
            float const low = v[0] + right * (v[1] - v[0]);
            float const high =
                v[Landscape::columns] + right * (v[Landscape::columns + 1] - v[Landscape::columns]);
            return low + up * (high - low);
        };
        for (int c = from; c < to; ++c) {
            float const off_open = blend(land.opennesses(), c) - openness,
                        off_front = front_weight * (blend(land.fronts(), c) - front);
            float const off = std::sqrt(off_open * off_open + off_front * off_front);
            float const missing = wanted - blend(land.levels(), c);
            cell[c] = of_r1 + text * off / (1 + saturation * off) + per_decibel * (missing > 0 ? missing : 0);
        }
        for (int c = 0; c < from; ++c) cell[c] = from < to ? cell[from] : 0;
        for (int c = to; c < width; ++c) cell[c] = from < to ? cell[to - 1] : 0;
    }
}

HeardCost heard_cost(ShapeGrid const& grid, std::size_t shape, Landscape const& land, Home const& home,
                     Aim const& aim) {
    auto const r1 = home.r1 * std::exp2(grid.d1(shape) / 12.0),
               r2 = home.r2 * std::exp2(grid.d2(shape) / 12.0);
    auto const sample = land.at(r1, r2);
    auto const& technique = aim.technique;
    HeardCost terms;
    terms.text = text_cost(distance(sample.heard, home.spoken), technique);
    terms.ring = ring_cost(sample.level, expected_level(home.at_ease, aim, land.pitch()),
                           ring_factor(land.loudness()), technique);
    terms.stability = stability_cost(land.pitch(), r1, technique);
    terms.relation = relation_cost(land.pitch(), r1, home.r1, technique);
    return terms;
}

} // namespace vowelway::plan
