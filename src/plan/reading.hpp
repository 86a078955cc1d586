// SPDX-License-Identifier: MIT
// From a choice of the optimiser to a decision in a singer's words. Private to the layer.
#pragma once

#include "plan/strategy.hpp"
#include "vowelway/plan/plan.hpp"

namespace vowelway::plan {

/// What a decision's words depend on beside its own note.
struct Beside {
    Pitch turning;                ///< of the vowel: 2fo = fR1
    std::optional<Pitch> from;    ///< the pitch the line comes from
    Vowel const* heard = nullptr; ///< the vowel named before, with the advice followed,
    Vowel const* kept = nullptr;  ///< and with the shape kept
    CostTerms cost_kept, cost_planned;
};

/// Everything said of one task: zone, heard vowels, target with its shade and gesture, reasons.
Decision read_decision(Strategy const& strategy, Task const& task, Choice const& choice,
                       Beside const& beside);

/// Going up with the shape kept, where the level of fo first exceeds that of 2fo after having been below it
/// around 2fo = fR1; 2fo = fR1 itself where it never was.
Pitch level_turn(VowelModel const& model, Strategy const& strategy);

/// 0 nothing to watch .. 1: how much a note deserves attention. `before`: the decision on the note before it.
double importance_of(Decision const& decision, Duration length, Decision const* before);

} // namespace vowelway::plan
