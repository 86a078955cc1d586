// SPDX-License-Identifier: MIT
// The sheet of a singer: what is known of the voice, to print.
// Threads: as draw.hpp.
#pragma once

#include "vowelway/chart/draw.hpp"
#include "vowelway/core/profile.hpp"
#include "vowelway/core/singer.hpp"

#include <vector>

namespace vowelway::chart {

struct SingerSheet {
    Singer singer;
    std::vector<Measurement> sources = {}; ///< by which probe a vowel is known, where that was kept
};

/// One page: fR1 and fR2 of each vowel as notes, and for each vowel its resonances, where it turns over,
/// where fo meets fR1, and where the numbers come from; set smaller where it would not fit. The kind and the
/// pitch in the options are not looked at. Throws InputError for a singer without vowels.
std::vector<Page> lay_out(SingerSheet const& sheet, ChartOptions const& options,
                          TextMeasurer const& measurer);
std::vector<Document> draw_svg(SingerSheet const& sheet, ChartOptions const& options,
                               TextMeasurer const& measurer);
std::vector<Document> draw(SingerSheet const& sheet, ChartOptions const& options, Form form);

} // namespace vowelway::chart
