// SPDX-License-Identifier: MIT
#include "analysis/pitch_path.hpp"

#include "analysis/filter.hpp"
#include "analysis/median.hpp"
#include "analysis/peak.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace vowelway::analysis {
namespace {

constexpr double reduced_rate = 4000;                          // Hz, enough for the fundamental
constexpr double look_length = 0.015, look_step = 0.010;       // s
constexpr double highest_followed = 550, lowest_followed = 85; // Hz
constexpr std::size_t fewest_looks = 4;
// What a step of the path costs, in units of likeness; our choice.
constexpr double of_no_pitch = 0.55;      // of a look that is taken as without pitch
constexpr double of_a_change = 0.2;       // from pitch to none and back
constexpr double of_an_octave = 3;        // of movement between two looks
constexpr double of_twice_as_long = 0.08; // of a period against one half as long: no octave too low

/// A period that a look may have; none: 0.
struct PossiblePeriod {
    double period, cost; // samples; of the look alone
};
struct PathStep {
    double cost = 0;
    std::size_t from = 0;
};

/// Every so many samples one, each the sum of the two such stretches before it, weighted as a triangle: a
/// pulse becomes wide enough that a period between two samples repeats too.
std::vector<double> reduced(std::span<double const> x, std::size_t factor) {
    std::vector<double> y(x.size() / factor > 0 ? x.size() / factor - 1 : 0, 0.0);
    for (std::size_t m = 0; m < y.size(); ++m)
        for (std::size_t n = 0; n < factor; ++n)
            y[m] += static_cast<double>(n + 1) * x[m * factor + n] +
                    static_cast<double>(factor - 1 - n) * x[(m + 1) * factor + n];
    return y;
}

/// Likeness of `look` samples at `x` with those each lag later: 1 where they are the same, less where they
/// differ in size as well, so that ringing which dies away is not taken for a pitch.
void likeness_at(double const* x, std::size_t look, std::size_t shortest, std::vector<double>& likeness) {
    filter({x + shortest, look + likeness.size() - 1}, {x, look}, likeness); // the products, lag by lag
    double here = 0, later = 0;
    for (std::size_t n = 0; n < look; ++n) here += x[n] * x[n], later += x[n + shortest] * x[n + shortest];
    for (std::size_t k = 0; k < likeness.size(); ++k) {
        auto const* y = x + shortest + k;
        likeness[k] = here + later > 0 ? 2 * likeness[k] / (here + later) : 0;
        later += y[look] * y[look] - y[0] * y[0];
    }
}

std::vector<PossiblePeriod> possible_periods(std::vector<double> const& likeness, std::size_t shortest) {
    std::vector<PossiblePeriod> found{{0, of_no_pitch}};
    for (std::size_t k = 1; k + 1 < likeness.size(); ++k) {
        double const left = likeness[k - 1], mid = likeness[k], right = likeness[k + 1];
        if (mid < left || mid <= right || mid < 1 - of_no_pitch - of_a_change) continue;
        auto const peak = peak_of(left, mid, right);
        double const period = static_cast<double>(shortest + k) + peak.shift;
        found.push_back(
            {period, 1 - peak.height + of_twice_as_long * std::log2(period / static_cast<double>(shortest))});
    }
    return found;
}

double cost_between(double before, double now) {
    if (before == 0 && now == 0) return 0;
    if (before == 0 || now == 0) return of_a_change;
    return of_an_octave * std::abs(std::log2(now / before));
}

/// The cheapest period of each look, 0 where there is none.
std::vector<double> cheapest(std::vector<std::vector<PossiblePeriod>> const& looks) {
    std::vector<std::vector<PathStep>> steps;
    for (std::size_t i = 0; i < looks.size(); ++i) {
        std::vector<PathStep> here(looks[i].size());
        for (std::size_t c = 0; c < here.size(); ++c) {
            PathStep best{i == 0 ? 0 : std::numeric_limits<double>::infinity(), 0};
            for (std::size_t b = 0; i > 0 && b < looks[i - 1].size(); ++b) {
                double const cost =
                    steps.back()[b].cost + cost_between(looks[i - 1][b].period, looks[i][c].period);
                if (cost < best.cost) best = {cost, b};
            }
            here[c] = {best.cost + looks[i][c].cost, best.from};
        }
        steps.push_back(std::move(here));
    }
    std::vector<double> periods(looks.size());
    auto const& last = steps.back();
    auto at = static_cast<std::size_t>(
        std::min_element(last.begin(), last.end(), [](PathStep a, PathStep b) { return a.cost < b.cost; }) -
        last.begin());
    for (std::size_t i = looks.size(); i-- > 0;) {
        periods[i] = looks[i][at].period;
        at = steps[i][at].from;
    }
    return periods;
}

} // namespace

PitchPath follow_pitch(std::span<double const> error, Frequency rate) {
    auto const factor = static_cast<std::size_t>(std::max(1.0, std::round(in_hertz(rate) / reduced_rate)));
    auto const x = reduced(error, factor);
    double const hz = in_hertz(rate) / static_cast<double>(factor);
    auto const look = static_cast<std::size_t>(look_length * hz),
               step = static_cast<std::size_t>(look_step * hz);
    auto const shortest = static_cast<std::size_t>(hz / highest_followed);
    std::vector<double> likeness(static_cast<std::size_t>(hz / lowest_followed) + 2 - shortest);
    std::vector<std::vector<PossiblePeriod>> looks;
    for (std::size_t from = 0; from + look + shortest + likeness.size() < x.size(); from += step) {
        likeness_at(x.data() + from, look, shortest, likeness);
        looks.push_back(possible_periods(likeness, shortest));
    }
    PitchPath path;
    if (looks.size() < fewest_looks) return path;
    auto const periods = cheapest(looks);
    std::vector<double> at, semitones, found;
    for (std::size_t i = 0; i < periods.size(); ++i)
        if (periods[i] > 0) {
            at.push_back(static_cast<double>(i));
            semitones.push_back(-12 * std::log2(periods[i]));
            found.push_back(periods[i]);
        }
    if (found.empty()) return path;
    path.share = static_cast<double>(found.size()) / static_cast<double>(periods.size());
    path.pitch = hertz(hz / upper_median(found));
    path.movement = movement_of(semitones, at, periods.size());
    return path;
}

} // namespace vowelway::analysis
