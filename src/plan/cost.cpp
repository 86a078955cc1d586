// SPDX-License-Identifier: MIT
#include "plan/cost.hpp"

#include "plan/objective.hpp"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace vowelway::plan {

namespace {

// fo is not to be caught by fR1: vibrato swings up to a semitone to either side of it. So the wish to be
// clear of it grows between these places of fo against fR1, in semitones.
constexpr double caught_from = -1.5, caught_to = 0.5;

// Exposure to a harmonic `above` fR1, growing from `from` semitones to `full`.
double exposure_from(Frequency r1, Cents above, double from, double full) {
    double const st = in_semitones(above), band = std::clamp(9 - 9 * std::log2(r1.value() / 300), 2.5, 9.0);
    if (st <= from || st >= band) return 0;
    if (st < full) {
        double const t = (st - from) / (full - from);
        return full - from > 1 ? t * t * (3 - 2 * t) : t;
    }
    double const middle = std::max(full, band / 2);
    return st <= middle ? 1 : (band - st) / (band - middle);
}

// All that depends on fR1 alone.
double stability_cost(Pitch fo, Frequency r1, Technique const& technique) {
    double const first = exposure_from(r1, interval(r1, fo.frequency()), caught_from, caught_to);
    double const second = exposure(r1, interval(r1, 2.0 * fo.frequency()));
    return technique.stability * std::max(first, 0.5 * second);
}

Frequency own(WantedRelation const& wanted, Home const& home) {
    return wanted.resonance.number == 1 ? home.r1 : home.r2;
}

// Whether a relation is asked of this vowel at all: the band that its unmodified shape serves reaches up to
// where the technique begins.
bool serves(WantedRelation const& wanted, Home const& home, Aim const& aim) {
    if (!wanted.unmodified) return true;
    auto const middle = Pitch(own(wanted, home) / static_cast<double>(wanted.harmonic.number));
    return !(middle + *wanted.unmodified / 2 < aim.begins);
}

// How much of a relation is asked of this vowel on this note, 0..1: a technique leaves a wish behind over a
// major third above the pitch to which it holds.
double asked(WantedRelation const& wanted, Pitch fo, Home const& home, Aim const& aim) {
    if (wanted.after_turn_only && 2.0 * fo.frequency() <= home.r1) return 0;
    if (wanted.from && fo < *wanted.from) return 0;
    if (!serves(wanted, home, aim)) return 0;
    if (wanted.within &&
        std::abs(interval(own(wanted, home), frequency_of(wanted.harmonic, fo)).value) > wanted.within->value)
        return 0;
    return wanted.to ? std::clamp(1 - in_semitones(fo - *wanted.to) / 5, 0.0, 1.0) : 1;
}

double relation_cost(WantedRelation const& wanted, Pitch fo, Frequency resonance) {
    double const above = in_semitones(interval(resonance, frequency_of(wanted.harmonic, fo)));
    double const departure = wanted.side == WantedRelation::Side::below   ? above
                             : wanted.side == WantedRelation::Side::above ? -above
                                                                          : std::abs(above);
    return wanted.weight * std::clamp(departure, 0.0, 12.0);
}

// What a technique wishes of this vowel on this note: found once, for all shapes.
class Wishes {
  public:
    Wishes(Pitch fo, Home const& home, Aim const& aim) : fo_(fo), home_r1_(home.r1) {
        for (auto const& wanted : aim.technique.relations)
            if (double const share = asked(wanted, fo, home, aim); share > 0)
                asked_.emplace_back(&wanted, share);
        if (asked_.empty() && !is_asked(home, aim)) opening_ = opening();
    }
    double cost(int resonance, Frequency at) const {
        double cost = 0;
        if (resonance == 1 && opening_ > 0)
            cost = opening_ * std::max(0.0, in_semitones(interval(home_r1_, at)));
        for (auto const& [wanted, share] : asked_)
            if (wanted->resonance.number == resonance) cost += share * relation_cost(*wanted, fo_, at);
        return cost;
    }

  private:
    // The turn is let: from where 2fo reaches the vowel's own fR1 until fo is a fourth below it nobody opens
    // for it, unless a technique asks for a place of fR1 on this vowel, or of fR2 on this note. Common
    // practice, no source; its size, a semitone, is a choice above any gain of level there.
    double opening() const {
        double const turned = in_semitones(interval(home_r1_, 2.0 * fo_.frequency()));
        return turned <= -1 || turned >= 7 ? 0 : 0.5 * std::min({1.0, turned + 1, (7 - turned) / 2});
    }

    Pitch fo_;
    Frequency home_r1_;
    std::vector<std::pair<WantedRelation const*, double>> asked_; // with how much of it
    double opening_ = 0;
};

} // namespace

Decibels expected_level(Decibels at_ease, Aim const& aim, Pitch fo) {
    auto const& t = aim.technique;
    double const octaves = (fo - aim.ease_pitch).value / 1200;
    double const upper = std::max(0.0, interval(t.upper_begins, fo.frequency()).value / 1200);
    return at_ease + octaves * t.level_per_octave + upper * (t.upper_level_per_octave - t.level_per_octave);
}

double exposure(Frequency r1, Cents above) { return exposure_from(r1, above, -0.5, 0.5); }

bool is_asked(Home const& home, Aim const& aim) {
    return std::any_of(
        aim.technique.relations.begin(), aim.technique.relations.end(),
        [&](auto const& wanted) { return wanted.resonance.number == 1 && serves(wanted, home, aim); });
}

double ring_factor(Decibels loudness) { return std::clamp(1 + 0.08 * loudness.value, 0.4, 1.8); }

void fill_heard(ShapeGrid const& grid, Landscape const& land, Home const& home, Aim const& aim,
                ShapeGrid const& within, ShapeCosts& out) {
    out.assign(grid.size(), 0);
    Objective<float> const objective(land, home, aim);
    int const width = grid.width2();
    float const leaving = land.pitch() < aim.begins ? too_low_to_modify : 0;
    std::vector<float> of_r2(static_cast<std::size_t>(width), leaving);
    Wishes const wishes(land.pitch(), home, aim);
    if (!aim.technique.relations.empty())
        for (int c = within.low2 - grid.low2; c <= within.high2 - grid.low2; ++c)
            of_r2[static_cast<std::size_t>(c)] +=
                static_cast<float>(wishes.cost(2, home.r2 * std::exp2((grid.low2 + c) / 12.0)));
    int const first = within.low2 - grid.low2, last = within.high2 - grid.low2 + 1;
    for (int d1 = within.low1; d1 <= within.high1; ++d1) {
        float* const cell = out.data() + grid.at(d1, grid.low2);
        auto const row = objective.row(d1);
        auto const r1 = home.r1 * std::exp2(d1 / 12.0);
        auto const of_r1 =
            static_cast<float>(stability_cost(land.pitch(), r1, aim.technique) + wishes.cost(1, r1));
        // The columns within the landscape without calls or branches, so that they are a few vector
        // instructions.
        int const from = std::clamp(objective.first_d2() - grid.low2, first, last),
                  to = std::clamp(objective.last_d2() - grid.low2 + 1, first, last);
        for (int c = from; c < to; ++c) {
            auto const at = row + (grid.low2 + c);
            cell[c] = of_r1 + of_r2[static_cast<std::size_t>(c)] + objective.text(at) + objective.ring(at);
        }
        auto const beyond = [&](int c, int edge) {
            if (from < to)
                cell[c] =
                    cell[edge] + (of_r2[static_cast<std::size_t>(c)] - of_r2[static_cast<std::size_t>(edge)]);
            else
                cell[c] = 0;
        };
        for (int c = first; c < from; ++c) beyond(c, from);
        for (int c = to; c < last; ++c) beyond(c, to - 1);
    }
    out[grid.home()] -= leaving;
}

HeardCost heard_cost(ShapeGrid const& grid, std::size_t shape, Landscape const& land, Home const& home,
                     Aim const& aim) {
    Objective<double> const objective(land, home, aim);
    auto const at =
        objective.row(grid.d1(shape)) + std::clamp(grid.d2(shape), objective.first_d2(), objective.last_d2());
    auto const r1 = home.r1 * std::exp2(grid.d1(shape) / 12.0),
               r2 = home.r2 * std::exp2(grid.d2(shape) / 12.0);
    double const leaving = shape != grid.home() && land.pitch() < aim.begins ? double{too_low_to_modify} : 0;
    Wishes const wishes(land.pitch(), home, aim);
    return {.text = objective.text(at),
            .ring = objective.ring(at),
            .stability = stability_cost(land.pitch(), r1, aim.technique),
            .relation = wishes.cost(1, r1) + wishes.cost(2, r2) + leaving};
}

} // namespace vowelway::plan
