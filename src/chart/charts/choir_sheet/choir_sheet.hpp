// SPDX-License-Identifier: MIT
// The choir sheet: for the director at rehearsal. Private to the layer.
#pragma once

#include "vowelway/chart/drawing.hpp"
#include "vowelway/plan/choir.hpp"

#include <vector>

namespace vowelway::chart {

std::vector<Page> choir_sheet(plan::Choir const& choir, Size paper, TextMeasurer const& measurer);

} // namespace vowelway::chart
