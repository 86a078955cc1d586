// SPDX-License-Identifier: MIT
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/plan.hpp"

#include <span>

namespace vowelway::chart {

/// What the lines, textures and signs of the lanes mean. Returns how far down it went.
/// Of what these plans show in their lanes, and of nothing else.
double draw_lane_legend(Canvas& canvas, std::span<plan::Plan const> plans, double y, double width);

} // namespace vowelway::chart
