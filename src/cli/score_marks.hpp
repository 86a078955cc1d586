// SPDX-License-Identifier: MIT
// From a plan to the marks written into its score.
#pragma once

#include "vowelway/io/score/mark_score.hpp"
#include "vowelway/plan/plan.hpp"

#include <optional>
#include <string_view>

namespace vowelway::cli {

/// How much is written.
enum class MarkDetail {
    vowels,  ///< the sung vowel under every note, nothing above
    changes, ///< vowels where the advice changes or modifies, and the words above them
    all      ///< the sung vowel under every note, words where the advice changes, turning and meeting notes
};
std::optional<MarkDetail> parse_mark_detail(std::string_view name);

io::ScoreMarks marks_of(plan::Plan const& plan, MarkDetail detail);

} // namespace vowelway::cli
