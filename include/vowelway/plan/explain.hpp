// SPDX-License-Identifier: MIT
// One sung note with everything that decided about it, as plain values.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/acoustics/tract.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::plan {

/// What a shape costs on this note, in the planner's unit (docs/strategy.md): 1 is what a clear loss of the
/// vowel costs on a note of one second. The heard terms are weighted by the note's length, as the planner
/// weighs them.
struct CostTerms {
    double text = 0;      ///< the heard vowel is not the intended one
    double ring = 0;      ///< level missing against what the singer has at ease
    double stability = 0; ///< fo or 2fo just above fR1
    double relation = 0;  ///< a harmonic on the side of fR1 the technique does not want
    double effort = 0;    ///< size of the gesture
    double attention = 0; ///< leaving the vowel's own shape at all
    double line = 0;      ///< moving from the shape of the note before and to that of the note after
    double total() const { return text + ring + stability + relation + effort + attention + line; }
};

struct CostTermName {
    std::string_view name, words;
    double CostTerms::*value;
};
inline constexpr std::array cost_term_names{
    CostTermName{"text", "the vowel heard", &CostTerms::text},
    CostTermName{"ring", "level missing", &CostTerms::ring},
    CostTermName{"stability", "harmonic above fR1", &CostTerms::stability},
    CostTermName{"relation", "the technique's wish", &CostTerms::relation},
    CostTermName{"effort", "size of the gesture", &CostTerms::effort},
    CostTermName{"attention", "a change at all", &CostTerms::attention},
    CostTermName{"line", "moving between notes", &CostTerms::line},
};

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

/// Share of the draws over the deviations that give each advice; all zero without draws.
struct AdviceShares {
    double hold = 0, migrate = 0, modify = 0;
    double of(Advice advice) const;
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
