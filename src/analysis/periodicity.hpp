// SPDX-License-Identifier: MIT
// How a signal repeats, frame by frame. Private to the analysis layer.
#pragma once

#include "analysis/pitch_line.hpp"
#include "vowelway/core/units.hpp"

#include <span>
#include <vector>

namespace vowelway::analysis {

/// What repeats between 70 and 1000 Hz.
struct Periodicity {
    double likeness = 0;  ///< median over frames of 60 ms: how like each period is to the next, 0..1
    double lasting = 0;   ///< median: the least likeness of all periods from 15 to 40 ms; 0 where not asked
    double agreement = 0; ///< share of the frames whose period is within 6 % of the median
    double period = 0;    ///< median, in samples; 0: none
    PitchMovement movement;
    std::vector<double> each; ///< likeness of each frame
};

/// `shortest`: no period below so many seconds is believed (the ringing of a resonance is none). `lasts`:
/// whether it is asked how it lasts.
Periodicity periodicity_of(std::span<double const> x, Frequency rate, double shortest, bool lasts);

} // namespace vowelway::analysis
