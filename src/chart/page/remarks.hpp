// SPDX-License-Identifier: MIT
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/plan.hpp"

namespace vowelway::chart {

/// What was assumed and guessed on the way, as far as the room down to `bottom` goes; says how many more
/// there are.
void draw_remarks(Canvas& canvas, plan::Plan const& plan, double x, double y, double width, double bottom);

} // namespace vowelway::chart
