// SPDX-License-Identifier: MIT
// A pitch followed from period to period. Private to the analysis layer.
#pragma once

#include "analysis/pitch_line.hpp"
#include "vowelway/core/units.hpp"

#include <span>

namespace vowelway::analysis {

/// The path of a pitch between 85 and 550 Hz through a prediction error: short looks (15 ms, each against
/// itself a period later), so that a pitch that moves as speech does is followed where the 60 ms of
/// `periodicity_of` blur it, and chosen together, so that no single look jumps an octave.
struct PitchPath {
    double share = 0; ///< of the looks that repeat, 0..1
    Frequency pitch;  ///< median of these; 0 Hz where there are none
    PitchMovement movement;
};

/// A pulse of a creak repeats too late (below 85 Hz), noise not at all. Periods of less than four successive
/// looks tell nothing: then the share is 0.
PitchPath follow_pitch(std::span<double const> error, Frequency rate);

} // namespace vowelway::analysis
