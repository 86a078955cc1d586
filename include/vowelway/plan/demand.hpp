// SPDX-License-Identifier: MIT
// What a song asks of a singer, in figures: the plan of its notes added up. For comparing keys, voices and
// whole libraries, where no one reads each note.
// Threads: plain values.
#pragma once

#include "vowelway/plan/load.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <cstddef>
#include <vector>

namespace vowelway::plan {

/// Shares of the time sung on a vowel, 0..1.
struct TimeShares {
    double hold = 0, migrate = 0, modify = 0; ///< by the certainty of each advice; together 1
    double turning = 0, meeting = 0;          ///< 2fo, and fo, within the uncertainty of fR1
    double turned = 0, above = 0;             ///< 2fo > fR1, and fo > fR1: each note by its probability
    double high_text = 0;                     ///< above F♯5, where vowels are told apart no more
};

/// One note with a vowel.
struct DemandNote {
    std::size_t note = 0; ///< index in the passage
    Zone zone = Zone::open;
    Advice advice = Advice::hold;
    double certainty = 1; ///< 0..1
    double cost = 0;      ///< of the note as planned
};

struct Demand {
    Load load;
    std::vector<DemandNote> each; ///< in the order sung
    std::size_t turns = 0;        ///< how often the line comes up past 2fo = fR1 within a phrase
    std::size_t exposed = 0;      ///< of them on the highest note of a phrase
    TimeShares time;
    Bark drift_kept, drift; ///< mean over the time sung of how far the heard vowel lies from the intended
                            ///< one: the shape kept, and the advice followed
    CostTerms cost;         ///< of all notes as planned
    double benefit = 0;     ///< by which to divide the heard terms of the cost: the sum of the notes' weights
    /// The note that costs most; nothing where no note has a vowel.
    DemandNote const* worst() const;
};

/// Plans the notes of a passage and adds up; faster than make_plan, for nothing is put into words. What
/// make_plan decides is what is added up. Throws InputError as make_plan, and where there are no notes.
/// Threads  any number at once, with the same means or others.
Demand demand_of(PlanRequest request, Means const& means = {});

} // namespace vowelway::plan
