// SPDX-License-Identifier: MIT
#include "vowelway/chart/draw_singer.hpp"

#include "chart/charts/charts.hpp"
#include "chart/drawn_svg.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

namespace vowelway::chart {
namespace {

/// The singer; a vowel known by another probe than the sheet's head names says by which.
Singer with_sources(SingerSheet const& sheet) {
    auto singer = sheet.singer;
    for (auto& v : singer.vowels) {
        auto const known = ranges::find_if(
            sheet.sources, [&](Measurement const& m) { return m.vowel.quality() == v.vowel.quality(); });
        if (v.estimated || !v.origin.empty() || known == sheet.sources.end()) continue;
        if (known->method == singer.provenance.method && known->date == singer.provenance.date) continue;
        v.origin = worded("known by") + ": " + std::string(reworded(to_string(known->method)));
        if (!known->date.empty()) v.origin += ", " + known->date;
    }
    return singer;
}

} // namespace

std::vector<Page> lay_out(SingerSheet const& sheet, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    if (sheet.singer.vowels.empty())
        throw InputError(worded("the profile of {0} has no vowels", sheet.singer.name),
                         worded("add at least one vowel with fR1 and fR2"));
    std::vector<Page> pages;
    pages.push_back(singer_sheet(with_sources(sheet), page_of(options), measurer));
    return pages;
}

std::vector<Document> draw_svg(SingerSheet const& sheet, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(sheet, options, measurer);
}

} // namespace vowelway::chart
