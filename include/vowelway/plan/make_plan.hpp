// SPDX-License-Identifier: MIT
// From a singer and a passage (or a range) to the plan.
#pragma once

#include "vowelway/core/technique.hpp"
#include "vowelway/plan/means.hpp"
#include "vowelway/plan/plan.hpp"

#include <optional>
#include <vector>

namespace vowelway::plan {

struct PlanRequest {
    Singer singer;
    std::optional<Singer>
        reference;   ///< the average of the singer's voice type, to estimate vowels not measured
    Passage passage; ///< may be without notes when a range is given
    std::optional<PitchRange> range; ///< default: the singer's range and the passage's compass together
    Technique technique;
    int draws = 50;            ///< over the deviations of the resonances, for the certainty of each advice
    std::vector<Vowel> vowels; ///< planned besides those sung; when no notes: default the singer's own, of an
                               ///< average i e ɛ a ɔ o u
};

/// Throws InputError when there is neither a note nor a range, or no resonances to plan from.
/// Threads  any number of plans at once, with the same means or others.
Plan make_plan(PlanRequest request, Means const& means = {});

} // namespace vowelway::plan
