// SPDX-License-Identifier: MIT
// The parts of the chart of one note.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/explain.hpp"

namespace vowelway::chart {

/// Syllable, pitch, vowel, what to do and why. Returns how far down it went.
double draw_verdict(Canvas& canvas, plan::NoteExplanation const& e, double y, double width);
/// The harmonics as bars: kept filled at the left of the frequency, changed outlined at its right.
void draw_spectrum(Canvas& canvas, plan::NoteExplanation const& e, Box const& area);
/// The gain of the tract with its resonances and their uncertainty.
void draw_resonances(Canvas& canvas, plan::NoteExplanation const& e, Box const& area);
/// The outline of the tract from the glottis to the lips.
void draw_tract(Canvas& canvas, plan::NoteExplanation const& e, Box const& area);
/// The terms of the cost as bars.
void draw_cost(Canvas& canvas, plan::NoteExplanation const& e, Box const& area);

} // namespace vowelway::chart
