// SPDX-License-Identifier: MIT
// The page of one singer in a teacher's folder.
// Threads: as draw.hpp.
#pragma once

#include "vowelway/chart/draw.hpp"
#include "vowelway/plan/keys.hpp"

#include <string>
#include <vector>

namespace vowelway::chart {

struct StudioPage {
    Singer singer;
    std::vector<std::string> known;    ///< lines: how old the measurement is, what is missing, what changed
    std::vector<plan::KeysPlan> songs; ///< in the order they stand
};

/// One page: the lines, and for each song the key that suits, what it asks for there, and what speaks against
/// it as written. The kind and the pitch in the options are not looked at.
std::vector<Page> lay_out(StudioPage const& page, ChartOptions const& options, TextMeasurer const& measurer);
std::vector<Document> draw_svg(StudioPage const& page, ChartOptions const& options,
                               TextMeasurer const& measurer);
std::vector<Document> draw(StudioPage const& page, ChartOptions const& options, Form form);

} // namespace vowelway::chart
