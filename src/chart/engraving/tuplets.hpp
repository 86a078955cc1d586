// SPDX-License-Identifier: MIT
#pragma once

#include "chart/engraving/set_event.hpp"

#include <vector>

namespace vowelway::chart {

/// The number of each tuplet over its notes, within a bracket where no beam holds them together.
void draw_tuplets(std::vector<SetEvent> const& sets, Canvas& canvas);

} // namespace vowelway::chart
