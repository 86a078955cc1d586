// SPDX-License-Identifier: MIT
// The plan decided but not yet put into words: what make_plan and explain_note have in common. Private to the
// layer.
#pragma once

#include "plan/strategy.hpp"
#include "plan/tasks.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <cstddef>
#include <vector>

namespace vowelway::plan {

/// The strips of all vowels, then the notes that have one: one list, so that what is common is computed once.
struct Work {
    std::vector<Task> tasks;
    std::vector<std::size_t> note_of; ///< for tasks behind the strips: index of the note
    std::size_t strips() const { return tasks.size() - note_of.size(); }
};

struct Decided {
    Plan plan; ///< all but the decisions
    Strategy strategy;
    Work work;
    std::vector<Choice> choices;            ///< of each task
    std::vector<std::vector<Advice>> drawn; ///< of each task, draw by draw
    std::size_t strip_draws = 0;            ///< how many of them decided on the strips too
};

/// Above it listeners tell few vowels apart, whatever the shape (docs/limits.md): F♯5.
inline constexpr SpelledPitch high_text{'F', 1, 5};

/// Whether the vowels are decided on at every pitch of the range too, or the notes alone.
enum class Strips { decided, left_out };

/// Errors as make_plan. Without strips nothing is said of where the levels turn either.
Decided decide_all(PlanRequest request, Means const& means, Strips strips = Strips::decided);

} // namespace vowelway::plan
