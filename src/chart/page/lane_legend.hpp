// SPDX-License-Identifier: MIT
#pragma once

#include "vowelway/chart/canvas.hpp"

namespace vowelway::chart {

/// What the lines, textures and signs of the lanes mean. Returns how far down it went.
double draw_lane_legend(Canvas& canvas, double y, double width);

} // namespace vowelway::chart
