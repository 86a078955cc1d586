// SPDX-License-Identifier: MIT
// The chart of a survey.
// Threads: as draw.hpp.
#pragma once

#include "vowelway/chart/draw.hpp"
#include "vowelway/plan/overview.hpp"

#include <vector>

namespace vowelway::chart {

/// Songs by singers, the least needy song first: in each field how much speaks against the song, as a square
/// that grows, and the key that suits best. As many pages as the songs and singers need. The kind and the
/// pitch in the options are not looked at. Throws InputError for a survey without a plan.
std::vector<Page> lay_out(plan::Overview const& overview, ChartOptions const& options,
                          TextMeasurer const& measurer);
std::vector<Document> draw_svg(plan::Overview const& overview, ChartOptions const& options,
                               TextMeasurer const& measurer);
std::vector<Document> draw(plan::Overview const& overview, ChartOptions const& options, Form form);

} // namespace vowelway::chart
