// SPDX-License-Identifier: MIT
// An exercise on a staff of its own.
#pragma once

#include "vowelway/chart/drawing.hpp"
#include "vowelway/plan/lesson.hpp"

namespace vowelway::chart {

/// The notes with the vowel under them, no wider than `width`; a slide has a line from note to note. The
/// ink's top is at y = 0.
Drawing exercise_staff(plan::Exercise const& exercise, plan::Plan const& plan, double width,
                       TextMeasurer const& measurer);

} // namespace vowelway::chart
