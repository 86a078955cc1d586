// SPDX-License-Identifier: MIT
#pragma once

#include "chart/engraving/score_layout.hpp"
#include "vowelway/chart/drawing.hpp"

#include <map>

namespace vowelway::chart {

/// What stands over a staff that is drawn already: numbers of the notes to watch, voltas, the bar's number,
/// tempo, dynamics and words; each as low as what is there lets it.
void draw_over_staff(System const& system, Staff const& staff, std::map<std::size_t, int> const& watched,
                     Drawing& drawing);

} // namespace vowelway::chart
