// SPDX-License-Identifier: MIT
// The first cells of a table's row about a note: its number in a circle, bar and beat, syllable and pitch.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/plan.hpp"

namespace vowelway::chart {

struct NoteColumns {
    double left = 0;  ///< of the number
    double where = 0; ///< bar and beat
    double what = 0;  ///< syllable and pitch
    double end = 0;   ///< where the next column begins
};

void draw_note_heads(Canvas& canvas, NoteColumns const& columns, double baseline);
/// A melisma is named by the syllable it carries on.
void draw_note_cells(Canvas& canvas, plan::Plan const& plan, std::size_t note, int number,
                     NoteColumns const& columns, double baseline);

} // namespace vowelway::chart
