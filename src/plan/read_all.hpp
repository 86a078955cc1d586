// SPDX-License-Identifier: MIT
// All decisions of a plan in words, each beside its neighbours. Private to the layer.
#pragma once

#include "plan/decided.hpp"

#include <vector>

namespace vowelway::plan {

/// What the shape of one task costs for the vowels as measured, its neighbours being as they were decided:
/// with the step from the note before and, unless told otherwise, the step to the next.
CostTerms cost_beside(Decided const& decided, std::size_t task, std::size_t shape, bool with_next = true);

/// The decision of every task, in order. Going up a strip a name stays until another is clearly nearer, and
/// notes are named as the strip is at their pitch.
std::vector<Decision> read_all(Decided const& decided);

} // namespace vowelway::plan
