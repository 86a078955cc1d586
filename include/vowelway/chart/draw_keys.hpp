// SPDX-License-Identifier: MIT
// The chart of a song in every key.
// Threads: as draw.hpp.
#pragma once

#include "vowelway/chart/draw.hpp"
#include "vowelway/plan/keys.hpp"

#include <vector>

namespace vowelway::chart {

/// A page for each singer: the line, and under it a row for each key, the highest first, in which every note
/// shows what it asks for; beside it where the line lies and what speaks against the key. The kind and the
/// pitch in the options are not looked at. Throws InputError for no singer.
std::vector<Page> lay_out(std::vector<plan::KeysPlan> const& singers, ChartOptions const& options,
                          TextMeasurer const& measurer);
std::vector<Document> draw_svg(std::vector<plan::KeysPlan> const& singers, ChartOptions const& options,
                               TextMeasurer const& measurer);
std::vector<Document> draw(std::vector<plan::KeysPlan> const& singers, ChartOptions const& options,
                           Form form);

} // namespace vowelway::chart
