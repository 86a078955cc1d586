// SPDX-License-Identifier: MIT
// From a plan to the marks written into its score.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/score_marks.hpp"
#include "vowelway/plan/choir.hpp"
#include "vowelway/plan/plan.hpp"

#include <optional>
#include <string_view>

namespace vowelway::report {

/// How much is written.
enum class MarkDetail {
    vowels,  ///< the sung vowel under every note, nothing above
    changes, ///< what plan::pencil_of chooses: a sign only where there is something to do, or a vowel turns
             ///< over
    all      ///< the sung vowel under every note, words wherever the advice changes or a vowel turns over
};
/// "vowels", "changes", "all".
std::optional<MarkDetail> parse_mark_detail(std::string_view name);

/// One mark at most for each note of the plan, in order, and a heading with the caution every output carries.
ScoreMarks marks_of(plan::Plan const& plan, MarkDetail detail);

/// The same for one part of a choir: where the vowels of a word part and all can sing one, the part is asked
/// for that, instead of what its own plan says (not with `vowels`).
ScoreMarks marks_of(plan::Choir const& choir, std::size_t part, MarkDetail detail);

} // namespace vowelway::report
