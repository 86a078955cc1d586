// SPDX-License-Identifier: MIT
// The chart of two singers' plans for one song.
// Threads: as draw.hpp.
#pragma once

#include "vowelway/chart/draw.hpp"
#include "vowelway/plan/compare_plans.hpp"

#include <vector>

namespace vowelway::chart {

/// The vocal line once, under each system a resonance lane and the advice for each singer, and a frame around
/// the notes where they part; first a table of those to speak of. The kind and the pitch in the options are
/// not looked at.
std::vector<Page> lay_out(plan::PlansCompared const& compared, ChartOptions const& options,
                          TextMeasurer const& measurer);
std::vector<Document> draw_svg(plan::PlansCompared const& compared, ChartOptions const& options,
                               TextMeasurer const& measurer);
std::vector<Document> draw(plan::PlansCompared const& compared, ChartOptions const& options, Form form);

} // namespace vowelway::chart
