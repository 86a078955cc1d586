// SPDX-License-Identifier: MIT
// Pitch up the page, a row a semitone: names, staff lines and hertz beside it.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/core/pitch.hpp"

namespace vowelway::chart {

struct PitchAxis {
    Tuning tuning;
    double low = 0, high = 0; ///< key numbers of the lowest and the highest row
    double top = 0, bottom = 0;

    double row() const { return (bottom - top) / (high - low + 1); }
    double y(double key) const { return bottom - (key - low + 0.5) * row(); }
    double y(Pitch p) const { return y(tuning.key_number(p.frequency())); }
    double clamped(Pitch p) const;

    /// Room for names and staff lines at the left, for hertz at the right.
    static constexpr double room_left = 60, room_right = 20;
    /// Rows of the black keys washed, names and lines left of `left`, hertz right of `right`.
    void draw(Canvas& canvas, double left, double right) const;
};

} // namespace vowelway::chart
