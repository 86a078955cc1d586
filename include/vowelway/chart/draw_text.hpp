// SPDX-License-Identifier: MIT
// The text sheet of a song: its poem with the sounds under the words, to hand out.
// Threads: as draw.hpp.
#pragma once

#include "vowelway/chart/draw.hpp"
#include "vowelway/core/sung_text.hpp"

#include <vector>

namespace vowelway::chart {

/// As many pages as it needs; the signs that occur stand at the end. The kind and the pitch in the options
/// are not looked at. Throws InputError for a text without words.
std::vector<Page> lay_out(SungText const& text, ChartOptions const& options, TextMeasurer const& measurer);
std::vector<Document> draw_svg(SungText const& text, ChartOptions const& options,
                               TextMeasurer const& measurer);
std::vector<Document> draw(SungText const& text, ChartOptions const& options, Form form);

} // namespace vowelway::chart
