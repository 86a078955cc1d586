// SPDX-License-Identifier: MIT
// The notes to watch, beside or above how far each vowel goes as it is.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/plan.hpp"

#include <map>

namespace vowelway::chart {

/// The notes to watch, in the order sung: index of the note -> its number from 1.
std::map<std::size_t, int> notes_to_watch(plan::Plan const& plan, std::size_t at_most);

/// Table of the notes to watch beside the passive ranges. Returns how far down it went.
double draw_watch(Canvas& canvas, plan::Plan const& plan, std::map<std::size_t, int> const& watched, double y,
                  double width);

} // namespace vowelway::chart
