// SPDX-License-Identifier: MIT
// What a shape costs on a note: the planner's objective (docs/strategy.md). Private to the layer.
#pragma once

#include "plan/landscape.hpp"
#include "plan/shape_grid.hpp"
#include "vowelway/core/technique.hpp"

#include <array>

namespace vowelway::plan {

/// A vowel as one draw of the measured resonances has it.
struct Home {
    Frequency r1, r2;
    acoustics::HeardPlace spoken;                           ///< where the vowel is heard when it is the vowel
    Decibels at_ease;                                       ///< the level expected of it at `ease_pitch`
    std::array<acoustics::VowelSpace::Border, 4> borders{}; ///< beyond them it is taken for another vowel
};

/// The terms of what is heard of one shape, for a note of one second. 1 is what a clear loss of the vowel
/// costs.
struct HeardCost {
    double text = 0, ring = 0, stability = 0, relation = 0;
    double total() const { return text + ring + stability + relation; }
};

/// What every note of a passage shares.
struct Aim {
    Technique technique;
    Pitch ease_pitch;               ///< where the singer is at ease: the level is measured against it
    Pitch begins = Pitch(hertz(1)); ///< below it nothing is modified
};

/// The level expected at `fo` of a vowel with `at_ease` at the aim's ease pitch.
Decibels expected_level(Decibels at_ease, Aim const& aim, Pitch fo);

/// How exposed the folds are to a harmonic that lies `above` fR1, 0..1: none while it is half a semitone
/// below, full from half a semitone above to the middle of the band in which the tract is compliant, none
/// again from its upper end. The band is 9 semitones wide at fR1 = 300 Hz and narrows to 2.5 at 500 Hz and
/// above: so it is over the area functions of Story, Titze & Hoffman 1996 (docs/acoustics.md). That harmonics
/// just below fR1 help the folds and just above it do not: Titze 2008, J. Acoust. Soc. Am. 123, 2733.
double exposure(Frequency r1, Cents above);

/// Whether the technique has a wish for this vowel's fR1.
bool is_asked(Home const& home, Aim const& aim);

/// The wish for level: a loud note misses it more than a soft one. 1 at mezzo-forte.
double ring_factor(Decibels loudness);

/// What leaving the vowel's own shape costs below the pitch where the technique begins: more than any gain.
inline constexpr float too_low_to_modify = 5;

/// What is heard of every shape within the bounds, 0 for the others (which nobody reaches); shapes beyond the
/// landscape take its edge. What the optimiser decides by: in single precision.
void fill_heard(ShapeGrid const& grid, Landscape const& land, Home const& home, Aim const& aim,
                ShapeGrid const& within, ShapeCosts& out);

/// The same for one shape, term by term, by the same code (src/plan/objective.hpp) in double precision: what
/// explains a decision.
HeardCost heard_cost(ShapeGrid const& grid, std::size_t shape, Landscape const& land, Home const& home,
                     Aim const& aim);

} // namespace vowelway::plan
