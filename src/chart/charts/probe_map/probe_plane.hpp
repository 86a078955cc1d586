// SPDX-License-Identifier: MIT
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/chart/draw_probes.hpp"

namespace vowelway::chart {

/// The plane of fR1 and fR2 with what was due, what was measured, the targets of a plan and arrows back from
/// what is off.
void draw_probe_plane(Canvas& canvas, ProbeMap const& p, Box const& box);

} // namespace vowelway::chart
