// SPDX-License-Identifier: MIT
// A technique: the aesthetic that weighs the trade-offs of a plan. Values only; read from YAML by io.
#pragma once

#include "vowelway/core/resonance.hpp"
#include "vowelway/core/units.hpp"
#include "vowelway/core/vibrato.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway {

/// A wanted place of a harmonic against fR1. Departures cost `weight` a semitone, up to an octave.
struct WantedRelation {
    enum class Side { below_fR1, above_fR1 };
    Harmonic harmonic{2};
    Side side = Side::below_fR1;
    bool after_turn_only = false;  ///< only at pitches where 2fo has passed the fR1 of the vowel's own shape
    double weight = 0;             ///< cost a semitone of departure
    std::optional<Pitch> from, to; ///< sung pitches it holds for; open where absent
};

/// Weights of the planner's cost (docs/strategy.md). Every cost is in the same unit: 1 is what a clear
/// loss of the vowel costs on a note of one second.
struct Technique {
    std::string name = "classical";
    std::string description;
    std::vector<std::string> sources;

    // What is heard of the text: cost of 1 Bark between the heard and the intended vowel, saturating.
    double text = 0.5;
    Bark text_saturation{3};
    // What is missing of the level the singer has at ease on the same vowel: cost of 1 dB.
    double ring = 0.07;
    Decibels ring_tolerance{1.2};        ///< a deficit nobody minds
    Decibels level_per_octave{6.5};      ///< how the level at ease grows with pitch,
    Decibels upper_level_per_octave{25}; ///< and from `upper_begins` on
    // fo and 2fo in the band just above fR1, where the folds are least supported: cost of full exposure.
    double stability = 0.32;
    std::vector<WantedRelation> relations;
    double effort = 0.16;   ///< cost of a gesture at the end of its comfortable travel
    double attention = 0.2; ///< cost of leaving the vowel's own shape at all: nobody can tune every note
    double line = 0.1;      ///< cost of moving fR1 by 1 semitone between neighbouring notes of half a second
    Vibrato vibrato;        ///< of the sound alone; the singer's own goes before it
    // The source (docs/acoustics.md).
    Decibels source_slope{-12}, upper_slope{-22};
    Frequency upper_begins = hertz(400), upper_complete = hertz(800);
};

} // namespace vowelway
