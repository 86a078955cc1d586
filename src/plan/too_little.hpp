// SPDX-License-Identifier: MIT
// Changes too small to be asked for. Private to the layer.
#pragma once

#include "plan/strategy.hpp"

#include <cstddef>
#include <vector>

namespace vowelway::plan {

/// Takes out of a course, one shape a task, what departs from the vowel's own shape by a semitone at most all
/// through a run of tasks on one vowel. Before or after a larger change on the same vowel it stays: there it
/// prepares or eases it.
void leave_out_the_little(ShapeGrid const& grid, std::vector<Task> const& tasks,
                          std::vector<std::size_t>& course);

} // namespace vowelway::plan
