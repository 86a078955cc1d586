// SPDX-License-Identifier: MIT
#include "vowelway/chart/draw_choir.hpp"

#include "chart/charts/choir_sheet/choir_sheet.hpp"
#include "chart/drawn_svg.hpp"

#include <algorithm>
#include <iterator>

namespace vowelway::chart {

std::vector<Page> lay_out(ChoirSheet const& sheet, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    return choir_sheet(sheet.choir, page_of(options), measurer);
}

std::vector<Document> draw_svg(ChoirSheet const& sheet, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(sheet, options, measurer);
}

std::vector<Page> lay_out(plan::Choir const& choir, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    std::vector<Page> pages;
    if (options.kind == Kind::automatic) pages = choir_sheet(choir, page_of(options), measurer);
    for (auto const& part : choir.parts) {
        auto own = lay_out(part.plan, options, measurer);
        std::move(own.begin(), own.end(), std::back_inserter(pages));
    }
    return pages;
}

std::vector<Document> draw_svg(plan::Choir const& choir, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(choir, options, measurer);
}

} // namespace vowelway::chart
