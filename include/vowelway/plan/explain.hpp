// SPDX-License-Identifier: MIT
// One sung note with everything that decided about it, as plain values.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/acoustics/tract.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::plan {

/// The note as one shape of the tract gives it.
struct ShapeExplained {
    Resonance r1, r2;
    std::vector<Decibels>
        harmonics; ///< of NoteExplanation::harmonics: 1 m from the mouth in the open, dB re 20 µPa
    std::vector<Decibels>
        curve; ///< gain of the tract at NoteExplanation::grid, resonances as wide as for the harmonics
    acoustics::AreaFunction tract; ///< the model tract, glottis to lips: one of many with these resonances
    std::string tract_objection;   ///< why the model tract is no human one; empty: it may be one
    CostTerms cost;
};

struct NoteExplanation {
    Singer singer;
    std::string technique, title, composer;
    Tuning tuning;
    SungNote note;
    std::string syllable;             ///< on a melisma the one that goes on
    VowelResonances vowel;            ///< as planned with, estimated or not
    Decision decision;                ///< the plan's own
    std::vector<Frequency> harmonics; ///< nfo, up to 5 kHz
    std::vector<Frequency> grid;      ///< 50..5000 Hz
    ShapeExplained kept;
    std::optional<ShapeExplained> changed; ///< present when the advice is `modify`
    /// Where the advice is to keep the shape: the best of the others.
    std::optional<ShapeExplained> not_chosen{};
    AdviceShares shares;
    int draws = 0;
    Remarks remarks; ///< the plan's
};

/// Plans the whole passage, for neighbours decide too, and tells about one note of it. Harmonics and curves
/// are as the planner has them: vibrato and the imprecise placement of a resonance widen every resonance
/// (acoustics/note_spectrum.hpp). Errors  as make_plan; std::out_of_range when there is no such note;
/// InputError when the note has no vowel to plan.
NoteExplanation explain_note(PlanRequest request, std::size_t note, Means const& means = {});

} // namespace vowelway::plan
