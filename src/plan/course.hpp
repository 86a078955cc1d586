// SPDX-License-Identifier: MIT
// The best course of shapes through a passage. Private to the layer.
#pragma once

#include "plan/shape_grid.hpp"

#include <span>
#include <vector>

namespace vowelway::plan {

/// What moving between two neighbouring notes costs: a semitone of fR1, a semitone of fR2; and beside that,
/// leaving the vowel's own shape for another, changing from one other shape to the next, and staying in one.
/// Going home and staying there cost nothing beside the way.
struct StepCost {
    float per_r1 = 0, per_r2 = 0;
    float leave = 0, change = 0, stay = 0; ///< stay <= change
    /// As leave, for a shape whose fR1 is not higher. A change from fR1 at home or above to below it costs as
    /// much, one from at home or below to above it as much as leave.
    float leave_down = 0;
};
double step_cost(ShapeGrid const& grid, StepCost const& step, std::size_t from, std::size_t to);

/// One note as the optimiser sees it: shape s costs benefit * heard[s] + fixed[s].
struct CourseNote {
    ShapeCosts const* heard = nullptr; ///< what is heard of each shape, for a note of one second
    ShapeCosts const* fixed = nullptr; ///< what each shape takes from the singer, however long the note
    float benefit = 1;
    StepCost step; ///< from the note before, or from home on the first
};

/// The shapes s_0 .. s_n-1 (indices of the grid) that minimise
///   sum_i cost_i(s_i) + step_cost(step_i, s_i-1, s_i), s_-1 being home,
/// by dynamic programming, exactly. Ties go to the shape nearest home, then to the lower index, so that the
/// answer does not depend on the machine.
/// The inner minimum over the previous shape is separable in d1 and d2, so it takes two sweeps along each
/// axis (the distance transform of Felzenszwalb & Huttenlocher 2012, Theory of Computing 8, for L1):
/// linear in the number of shapes and of notes.
std::vector<std::size_t> best_course(ShapeGrid const& grid, std::span<CourseNote const> notes);

/// The cost of a given course, by the formula above.
double cost_of_course(ShapeGrid const& grid, std::span<CourseNote const> notes,
                      std::span<std::size_t const> course);

} // namespace vowelway::plan
