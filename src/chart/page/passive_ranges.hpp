// SPDX-License-Identifier: MIT
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/plan.hpp"

#include <span>

namespace vowelway::chart {

/// A column of the passive ranges of some vowels: how high each goes as it is, and with how much certainty.
/// Returns where it ends.
double draw_passive_ranges(Canvas& canvas, plan::Plan const& plan, std::span<plan::VowelPlan const> vowels,
                           double x, double y, double width);

} // namespace vowelway::chart
