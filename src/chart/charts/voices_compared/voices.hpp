// SPDX-License-Identifier: MIT
// The voices of a comparison on the page: a mark and a name for each, a legend, a table in words.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/compare.hpp"

#include <string>

namespace vowelway::chart {

inline constexpr std::size_t most_voices =
    9; ///< the voice types and one singer; more do not fit a page; the rest is left to the table

/// A mark of its own shape for each voice; ink alone would not tell them apart in grey.
void draw_voice_mark(Canvas& canvas, Point c, double r, std::size_t voice, bool filled);

bool all_average(plan::Comparison const& comparison);
/// As short as it is clear: where all are averages, the voice type says it.
std::string voice_name(Singer const& singer, bool all_average);
/// For the head of a narrow column: the type stands for its average.
std::string short_voice_name(Singer const& singer);

/// Marks and names, and whose passaggio is shown. Returns how far down it went, like the table.
double draw_voices_legend(Canvas& canvas, plan::Comparison const& comparison, std::size_t voices, double y,
                          double width);
/// Turning points in words; of two voices also how far apart they lie, bold where beyond their uncertainty.
double draw_turning_points(Canvas& canvas, plan::Comparison const& comparison, std::size_t voices,
                           Tuning const& tuning, double y, double width);

} // namespace vowelway::chart
