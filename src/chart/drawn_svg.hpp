// SPDX-License-Identifier: MIT
// What the pages of every chart have in common, whatever is on them. Private to the layer.
#pragma once

#include "chart/canvas/svg_canvas.hpp"
#include "chart/caption.hpp"
#include "vowelway/chart/draw.hpp"

#include <vector>

namespace vowelway::chart {

/// The paper in the points of the layout.
inline Size page_of(ChartOptions const& options) {
    auto const paper = options.page.value_or(size_of(options.paper));
    return {paper.width / options.theme.size, paper.height / options.theme.size};
}

/// The pages as SVG; `lay_out` and `caption` are those of the content.
template <class Content>
std::vector<Document> svg(Content const& content, ChartOptions const& options, TextMeasurer const& measurer) {
    auto const theme = options.grey ? options.theme.grey() : options.theme;
    return as_svg(lay_out(content, options, measurer), measurer, theme, caption(content));
}

} // namespace vowelway::chart
