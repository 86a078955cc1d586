// SPDX-License-Identifier: MIT
#pragma once

#include "chart/page/lane.hpp"
#include "vowelway/chart/drawing.hpp"
#include "vowelway/plan/plan.hpp"

#include <vector>

namespace vowelway::chart {

/// Under the lane what to do: the signs on a rail of their own, each where its advice begins; the words
/// beneath, on the first or the second line, as there is room: those that ask for something come first. Of a
/// vowel that drifts by itself words are said only where that is sure. What finds no room is left to the sign
/// (and the front page). Returns how far down it went.
double draw_advice(plan::Plan const& plan, std::vector<Sounding> const& soundings, double width, double y,
                   Drawing& drawing);

} // namespace vowelway::chart
