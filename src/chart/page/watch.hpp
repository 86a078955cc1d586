// SPDX-License-Identifier: MIT
// The notes to watch, and beside or below them how far each vowel goes as it is.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/pencil.hpp"

#include <map>

namespace vowelway::chart {

/// Index of the note -> its number from 1, in the order sung; equal places have one number.
std::map<std::size_t, int> numbers_of(plan::Pencil const& pencil);

/// Table of the notes to watch; with numbers also what happens there. Returns how far down it went.
double draw_watch(Canvas& canvas, plan::Plan const& plan, plan::Pencil const& pencil, double y, double width,
                  bool numbers);

/// How far each vowel goes as it is, in one column or in two. Returns how far down it went.
double draw_ranges(Canvas& canvas, plan::Plan const& plan, double x, double y, double width, int columns);

} // namespace vowelway::chart
