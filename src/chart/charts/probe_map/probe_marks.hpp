// SPDX-License-Identifier: MIT
// The marks of probes: each kind has a shape. Whisper round, creak square, sung three-cornered.
#pragma once

#include "vowelway/analysis/formants.hpp"
#include "vowelway/chart/canvas.hpp"

namespace vowelway::chart {

void draw_single_take(Canvas& canvas, analysis::ProbeKind kind, Point at);
void draw_pooled_takes(Canvas& canvas, analysis::ProbeKind kind, Point at);
void draw_target_mark(Canvas& canvas, Point centre);
/// The centre of what was expected.
void draw_cross(Canvas& canvas, Point centre);

} // namespace vowelway::chart
