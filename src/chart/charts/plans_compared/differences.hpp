// SPDX-License-Identifier: MIT
// The front of the chart of two plans: where they differ, and how long each singer does what.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/compare_plans.hpp"

#include <map>

namespace vowelway::chart {

/// The differences to speak of, in the order sung: index of the note -> its number.
std::map<std::size_t, int> differences_to_list(plan::PlansCompared const& c);

/// Both return how far down they went.
double draw_differences(Canvas& canvas, plan::PlansCompared const& c,
                        std::map<std::size_t, int> const& numbers, double y, double width);
double draw_shares(Canvas& canvas, plan::PlansCompared const& c, double y, double width);

} // namespace vowelway::chart
