// SPDX-License-Identifier: MIT
// A card of instructions on one page. Private to the layer.
#pragma once

#include "vowelway/chart/draw_card.hpp"

namespace vowelway::chart {

Page instruction_card(analysis::RecordingCard const& card, Size paper, TextMeasurer const& measurer);

} // namespace vowelway::chart
