// SPDX-License-Identifier: MIT
// A technique: the aesthetic that weighs the trade-offs of a plan. Values only; read from YAML by io.
#pragma once

#include "vowelway/core/resonance.hpp"
#include "vowelway/core/units.hpp"
#include "vowelway/core/vibrato.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace vowelway {

/// A wanted place of a harmonic against a resonance. Departures cost `weight` a semitone, up to an octave.
struct WantedRelation {
    enum class Side { below, above, at };
    Harmonic harmonic{2};
    Side side = Side::below;
    ResonanceNumber resonance{1}; ///< fR1 or fR2
    bool after_turn_only = false; ///< only at pitches where 2fo has passed the fR1 of the vowel's own shape
    double weight = 0;            ///< cost a semitone of departure
    std::optional<Pitch> from{}, to{}; ///< sung pitches it holds for; open where absent
    /// Width of the band around fR1/harmonic that an unmodified vowel serves; only vowels whose band reaches
    /// up to where the technique begins take part. All where absent.
    std::optional<Cents> unmodified{};
    /// Asked only where the vowel's own resonance is no farther than this from the wanted place: tuning is
    /// done where it is near. Everywhere where absent.
    std::optional<Cents> within{};
};

/// Whose vowels stand for a singer who was not measured: as people speak them, or as they are sung
/// (profiles/README.md says by which rule).
enum class AverageVowels { spoken, sung };

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
    double stability_of_men = 0.1; ///< the same for bass, baritone and tenor
    std::vector<WantedRelation> relations;
    double effort = 0.16;   ///< cost of a gesture at the end of its comfortable travel
    double attention = 0.2; ///< cost of leaving the vowel's own shape: what is learnt is a shape for a phrase
    double line = 0.1;      ///< cost of moving fR1 by 1 semitone between neighbouring notes of half a second
    AverageVowels averages = AverageVowels::sung; ///< which averages go with it
    Vibrato vibrato;                              ///< of the sound alone; the singer's own goes before it
    /// How far the vowel may close and darken by itself, the shape kept, before the text counts as touched.
    Bark drift{3};
    /// Cost of a shape that is taken for another vowel of the language where the vowel's own shape is not;
    /// and the same on vowels of which a relation with fR1 is asked.
    double other_vowel = 0.1, other_vowel_asked = 0.1;
    /// The pitch below which nothing is modified, against the singer's quarter-wave resonance; 0: none.
    double begins = 0;
    /// Worth of a larynx that sinks and a pharynx that widens by their whole travel: the singer's formant.
    double cluster = 0;
    /// What each part of the gesture costs against ReachOptions::cost, by acoustics::GesturePart.
    std::array<double, 7> gestures{1, 1, 1, 1, 1, 1, 1};
    // The source (docs/acoustics.md).
    Decibels source_slope{-12}, upper_slope{-22};
    Frequency upper_begins = hertz(400), upper_complete = hertz(800);
};

} // namespace vowelway
