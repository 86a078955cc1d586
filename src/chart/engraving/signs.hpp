// SPDX-License-Identifier: MIT
// The staff without its notes: lines, clefs, keys, times, barlines and rests of several bars.
#pragma once

#include "chart/engraving/score_layout.hpp"

namespace vowelway::chart {

void draw_staff_lines(System const& system, Canvas& canvas);
void draw_signs(System const& system, Staff const& staff, Canvas& canvas);

} // namespace vowelway::chart
