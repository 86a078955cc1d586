// SPDX-License-Identifier: MIT
// From a choice of the optimiser to a decision in a singer's words. Private to the layer.
#pragma once

#include "plan/strategy.hpp"
#include "vowelway/plan/plan.hpp"

namespace vowelway::plan {

/// Everything said of one task: zone, heard vowels, target with its shade and gesture, reasons.
Decision read_decision(Strategy const& strategy, Task const& task, Choice const& choice);

/// 0 nothing to watch .. 1: how much a note deserves attention. `before`: the decision on the note before it.
double importance_of(Decision const& decision, Duration length, Decision const* before);

} // namespace vowelway::plan
