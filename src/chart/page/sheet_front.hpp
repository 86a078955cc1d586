// SPDX-License-Identifier: MIT
// What stands over the music of a passage sheet: title, notes to watch, ranges of the vowels, legend.
#pragma once

#include "chart/page/title.hpp"
#include "vowelway/chart/drawing.hpp"
#include "vowelway/plan/pencil.hpp"

#include <vector>

namespace vowelway::chart {

/// What stands over the blocks of a page.
struct Heading {
    Drawing drawing;
    double height = 0;
};

/// Over the first page; or, where that would leave no room there for the first block of music, title and
/// notes to watch over the first page and the rest over the second. `area` is the page within its margins.
std::vector<Heading> headings_of(plan::Plan const& plan, plan::Pencil const& pencil, Head const& title,
                                 Size area, double first_block, TextMeasurer const& measurer, bool numbers);

} // namespace vowelway::chart
