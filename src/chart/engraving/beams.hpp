// SPDX-License-Identifier: MIT
#pragma once

#include "chart/engraving/set_event.hpp"

#include <vector>

namespace vowelway::chart {

/// Draws the beams and gives the notes under each the stems that reach it.
void draw_beams(std::vector<SetEvent>& sets, Canvas& canvas);

} // namespace vowelway::chart
