// SPDX-License-Identifier: MIT
// A chart that is one page, whatever the paper: laid out on a page as large as it needs and drawn smaller,
// never larger than the pencil view.
#pragma once

#include "chart/page/title.hpp"
#include "vowelway/chart/drawing.hpp"

#include <functional>
#include <string_view>

namespace vowelway::chart {

/// `draw(canvas, width)` draws all below the margin and returns how far down it went; it is asked again for a
/// larger page until it fits. `what` is the kind of chart at the head.
Page on_one_page(Head const& head, std::string_view what, Size paper, TextMeasurer const& measurer,
                 std::function<double(Canvas&, double)> const& draw);

} // namespace vowelway::chart
