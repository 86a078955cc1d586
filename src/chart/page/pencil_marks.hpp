// SPDX-License-Identifier: MIT
// What is pencilled over a staff: the vowel to sing, what to do, the sign where the vowel turns over.
#pragma once

#include "chart/engraving/score_layout.hpp"
#include "vowelway/chart/drawing.hpp"
#include "vowelway/plan/pencil.hpp"

namespace vowelway::chart {

/// The vowel turns over: an arrow that bends over to the right. No sign of music looks so. About 1.2 `size`
/// wide; its foot stands at the point.
void turn_sign(Canvas& canvas, Point foot, double size);

/// Over a staff that is drawn already, each mark as low as what is there lets it.
void draw_pencil_marks(System const& system, plan::Pencil const& pencil, Drawing& drawing);

/// What the marks mean: only those that occur. Returns how far down it went.
double draw_pencil_legend(Canvas& canvas, plan::Pencil const& pencil, double y, double width);

} // namespace vowelway::chart
