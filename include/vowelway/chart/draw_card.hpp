// SPDX-License-Identifier: MIT
// A card of what to do when recording, to print.
// Threads: as draw.hpp.
#pragma once

#include "vowelway/analysis/recording_card.hpp"
#include "vowelway/chart/draw.hpp"

#include <vector>

namespace vowelway::chart {

/// One page. The kind and the pitch in the options are not looked at.
std::vector<Page> lay_out(analysis::RecordingCard const& card, ChartOptions const& options,
                          TextMeasurer const& measurer);
std::vector<Document> draw(analysis::RecordingCard const& card, ChartOptions const& options, Form form);

} // namespace vowelway::chart
