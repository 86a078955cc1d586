// SPDX-License-Identifier: MIT
// What a decision costs, and how sure it is.
// Threads: plain values.
#pragma once

#include <array>
#include <string_view>

namespace vowelway::plan {

enum class Advice {
    hold,    ///< nothing needed
    migrate, ///< keep the shape; the heard vowel drifts (passive migration)
    modify   ///< change the shape (active modification)
};
std::string_view to_string(Advice advice);

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

/// Share of the draws over the deviations that give each advice; all zero without draws.
struct AdviceShares {
    double hold = 0, migrate = 0, modify = 0;
    double of(Advice advice) const;
};

} // namespace vowelway::plan
