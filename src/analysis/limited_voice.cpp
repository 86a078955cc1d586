// SPDX-License-Identifier: MIT
#include "analysis/limited_voice.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::analysis {
namespace {

constexpr std::size_t fewest_voiced = 4, farthest = 2;
constexpr double most_of_middle = 0.65, most_of_rest = 0.38;
constexpr double over_median = 1.4826; // deviation of a normal variable over its median distance

/// The mean of the two middle ones of an even number.
double middle_of(std::vector<double> const& sorted) {
    auto const half = sorted.size() / 2;
    return sorted.size() % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

} // namespace

double least_bandwidth(double hz) {
    double const x = hz / 500;
    return 15 / (x * x) + 20 * std::sqrt(x) + 5 * x * x;
}

bool looks_limited(std::vector<FormantReading const*> const& takes) {
    std::vector<double> widths;
    std::size_t read = 0;
    for (auto const* t : takes) {
        if (!t->formants[0] || !t->formants[1]) continue;
        ++read;
        for (std::size_t k = 0; k < 2; ++k)
            widths.push_back(std::log(std::max(0.01, in_hertz(t->formants[k]->bandwidth) /
                                                         least_bandwidth(in_hertz(t->formants[k]->centre)))));
    }
    if (read < fewest_voiced) return false;
    std::sort(widths.begin(), widths.end());
    double const centre = middle_of(widths);
    for (auto& w : widths) w = std::abs(w - centre);
    std::sort(widths.begin(), widths.end());
    if (over_median * middle_of(widths) < most_of_middle) return false;
    double squares = 0;
    auto const kept = widths.size() - farthest;
    for (std::size_t i = 0; i < kept; ++i) squares += widths[i] * widths[i];
    return std::sqrt(squares / static_cast<double>(kept)) > most_of_rest;
}

} // namespace vowelway::analysis
