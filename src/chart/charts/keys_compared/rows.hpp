// SPDX-License-Identifier: MIT
// A song in its keys: the line, and a row for each key. Private to the chart.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/keys.hpp"

namespace vowelway::chart {

/// Where the columns of the chart stand.
struct KeyColumns {
    double left = 0, right = 0;   ///< of the notes, in the order sung
    double begins = 0, whole = 1; ///< seconds
    double x(Duration at) const { return left + (in_seconds(at) - begins) / whole * (right - left); }
};
KeyColumns key_columns(plan::KeysPlan const& keys, double width);

/// The melody as steps, the pitches the voice may dwell on behind it in the key proposed; bar numbers under
/// it. Returns how far down it went.
double draw_line(Canvas& canvas, plan::KeysPlan const& keys, KeyColumns const& columns, double y);

/// One key; `most` is what speaks most against any. Returns how far down it went.
double draw_key(Canvas& canvas, plan::KeysPlan const& keys, plan::KeyPlan const& key,
                KeyColumns const& columns, double most, double y);

/// Only of what is shown.
double draw_key_legend(Canvas& canvas, plan::KeysPlan const& keys, double y, double width);

} // namespace vowelway::chart
