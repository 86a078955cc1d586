// SPDX-License-Identifier: MIT
// Words the parts of a page share.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/core/vowel.hpp"

#include <string>
#include <string_view>

namespace vowelway::chart {

/// A line of type with a rule under it; returns where what follows begins.
double draw_heading(Canvas& canvas, double x, double y, double width, std::string_view text);

/// Text in as many lines as it needs, from one line below y; returns the last baseline.
double paragraph(Canvas& canvas, double x, double y, double width, std::string_view text,
                 TextStyle const& style, double line_height = 12);

/// "1", "4.5"
std::string beat_of(double beat);
/// "/ɑ/"
std::string slashed(Vowel const& vowel);

} // namespace vowelway::chart
