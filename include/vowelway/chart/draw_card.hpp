// SPDX-License-Identifier: MIT
// A card of instructions, to print.
// Threads: as draw.hpp.
#pragma once

#include "vowelway/chart/draw.hpp"

#include <string>
#include <vector>

namespace vowelway::chart {

/// What a card says, as text: blocks apart by empty lines. The first is the title, a line that is alone in
/// its block stands large, every other block has a heading and under it points, each from a "- " to the next.
struct InstructionCard {
    std::string text;
};

/// One page. The kind and the pitch in the options are not looked at.
std::vector<Page> lay_out(InstructionCard const& card, ChartOptions const& options,
                          TextMeasurer const& measurer);
std::vector<Document> draw(InstructionCard const& card, ChartOptions const& options, Form form);

} // namespace vowelway::chart
