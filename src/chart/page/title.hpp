// SPDX-License-Identifier: MIT
// Title and margins of a page: who, what, and how to read it; caution and page number.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/plan.hpp"

#include <string>
#include <string_view>

namespace vowelway::chart {

/// What stands at the head of a chart.
struct Head {
    std::string title, aside; ///< aside: the composer
    std::string who, how;
    std::string source;   ///< how and when the resonances became known
    bool average = false; ///< the source is the notice of an average voice, and is made to stand out
    std::string sentence; ///< what the chart shows
};
Head head_of(plan::Plan const& plan, std::string_view sentence);
/// Who sings, in which technique and how the resonances are known; title and sentence are left to the chart.
Head head_of(Singer const& singer, std::string_view technique);
/// Returns how far down it went.
double draw_title(Canvas& canvas, Head const& head, double width);
/// Caution and page number at the foot; at the head the kind of chart, later the running title.
void draw_margins(Canvas& canvas, Head const& head, std::string_view what, Size paper, std::size_t page,
                  std::size_t pages);

} // namespace vowelway::chart
