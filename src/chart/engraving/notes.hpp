// SPDX-License-Identifier: MIT
// One event of the staff: its heads with ledger lines, dots and accidentals, its stem and flags, or its rest;
// and the marks at it.
#pragma once

#include "chart/engraving/set_event.hpp"

namespace vowelway::chart {

void draw_note(SetEvent const& set, Canvas& canvas);
void draw_rest(SetEvent const& set, Canvas& canvas);
/// Staccato, tenuto, accent, fermata, breath.
void draw_articulations(SetEvent const& set, Canvas& canvas);

} // namespace vowelway::chart
