// SPDX-License-Identifier: MIT
// The lesson sheet of a song.
// Threads: as draw.hpp.
#pragma once

#include "vowelway/chart/draw.hpp"
#include "vowelway/plan/lesson.hpp"

#include <vector>

namespace vowelway::chart {

/// One page: the song in three lines, its phrases by difficulty, the order of practice, and exercises in
/// notation; set smaller where it would not fit. The kind and the pitch in the options are not looked at.
std::vector<Page> lay_out(plan::Lesson const& lesson, ChartOptions const& options,
                          TextMeasurer const& measurer);
std::vector<Document> draw_svg(plan::Lesson const& lesson, ChartOptions const& options,
                               TextMeasurer const& measurer);
std::vector<Document> draw(plan::Lesson const& lesson, ChartOptions const& options, Form form);

} // namespace vowelway::chart
