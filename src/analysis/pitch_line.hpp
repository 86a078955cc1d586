// SPDX-License-Identifier: MIT
// How a pitch moves. Private to the analysis layer.
#pragma once

#include "analysis/median.hpp"

#include <cmath>
#include <vector>

namespace vowelway::analysis {

struct PitchMovement {
    double drift = 0; ///< from the first look to the last, on a straight line, semitones
    double swing = 0; ///< median distance from that line, semitones
};

/// Of pitches (semitones above any one) in these of all `looks`, by least squares. Still where there are
/// none.
inline PitchMovement movement_of(std::vector<double> const& semitones, std::vector<double> const& looks_with,
                                 std::size_t looks) {
    auto const n = static_cast<double>(semitones.size());
    double sx = 0, sy = 0, sxx = 0, sxy = 0;
    for (std::size_t i = 0; i < semitones.size(); ++i) {
        double const x = looks_with[i], y = semitones[i];
        sx += x, sy += y, sxx += x * x, sxy += x * y;
    }
    double const wide = n * sxx - sx * sx;
    double const slope = wide > 0 ? (n * sxy - sx * sy) / wide : 0, start = n > 0 ? (sy - slope * sx) / n : 0;
    std::vector<double> away;
    for (std::size_t i = 0; i < semitones.size(); ++i)
        away.push_back(std::abs(semitones[i] - start - slope * looks_with[i]));
    return {slope * static_cast<double>(looks - 1), upper_median(std::move(away))};
}

} // namespace vowelway::analysis
