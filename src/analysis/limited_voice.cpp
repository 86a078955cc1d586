// SPDX-License-Identifier: MIT
#include "analysis/limited_voice.hpp"

#include "analysis/median.hpp"
#include "core/closed_glottis.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::analysis {
namespace {

constexpr std::size_t fewest_voiced = 4, farthest = 2;
constexpr double most_of_middle = 0.65, most_of_rest = 0.38;

} // namespace

bool looks_limited(std::vector<FormantReading const*> const& takes) {
    std::vector<double> widths;
    std::size_t read = 0;
    for (auto const* t : takes) {
        if (!t->formants[0] || !t->formants[1]) continue;
        ++read;
        for (std::size_t k = 0; k < 2; ++k) {
            double const multiple =
                t->formants[k]->bandwidth / closed_glottis_bandwidth(t->formants[k]->centre);
            widths.push_back(std::log(std::max(0.01, multiple)));
        }
    }
    if (read < fewest_voiced) return false;
    double const centre = median(widths);
    for (auto& w : widths) w = std::abs(w - centre);
    if (sd_over_median_distance * median(widths) < most_of_middle) return false;
    std::sort(widths.begin(), widths.end());
    double squares = 0;
    auto const kept = widths.size() - farthest;
    for (std::size_t i = 0; i < kept; ++i) squares += widths[i] * widths[i];
    return std::sqrt(squares / static_cast<double>(kept)) > most_of_rest;
}

} // namespace vowelway::analysis
