// SPDX-License-Identifier: MIT
// What a shape costs on a note: the planner's objective (docs/strategy.md). Private to the layer.
#pragma once

#include "landscape.hpp"
#include "shape_grid.hpp"
#include "vowelway/core/technique.hpp"

namespace vowelway {

/// A vowel as one draw of the measured resonances has it.
struct Home {
    Frequency r1, r2;
    HeardPlace spoken;  ///< where the vowel is heard when it is the vowel
    Decibels at_ease;   ///< the level expected of it at `ease_pitch`
};

/// The note's own circumstances.
struct NoteWeights {
    float benefit = 1; ///< stretches all that is heard: long held notes weigh more, fast ones less
    float ring = 1;    ///< stretches the wish for level: a loud note misses it more than a soft one
};

/// The terms of the cost of one shape, in its unit; their sum is what the optimiser minimises.
struct CostTerms {
    double text = 0, ring = 0, stability = 0, relation = 0, effort = 0, attention = 0;
    double total() const { return text + ring + stability + relation + effort + attention; }
};

/// Level grows with pitch at the same ease: 8 dB an octave (8-9 dB: Titze & Sundberg 1992, J. Acoust. Soc.
/// Am. 91, 2936; from memory).
inline constexpr Decibels level_per_octave{8};

/// The level expected at `fo` of a vowel that has `at_ease` at `ease_pitch`.
Decibels expected_level(Decibels at_ease, Pitch ease_pitch, Pitch fo);

/// How exposed the folds are where a harmonic lies `above` fR1: 0 while it is a little below, most just above it, where
/// the tract is compliant, and 0 again from a major third on (science of the narrow band: docs/acoustics.md; Titze 2008).
double exposure(Cents above);

/// Costs of every shape of the grid for one note. `efforts` has the reach and effort of each shape.
void fill_costs(ShapeGrid const& grid, Landscape const& land, Home const& home, Technique const& technique, Pitch ease_pitch,
                NoteWeights weights, ShapeCosts const& efforts, ShapeCosts& out);

/// The same for one shape, term by term.
CostTerms cost_terms(ShapeGrid const& grid, std::size_t shape, Landscape const& land, Home const& home, Technique const& technique,
                     Pitch ease_pitch, NoteWeights weights, ShapeCosts const& efforts);

} // namespace vowelway
