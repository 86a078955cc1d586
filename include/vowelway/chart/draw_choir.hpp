// SPDX-License-Identifier: MIT
// The charts of all parts of a score.
// Threads: as draw.hpp.
#pragma once

#include "vowelway/chart/draw.hpp"
#include "vowelway/plan/choir.hpp"

#include <vector>

namespace vowelway::chart {

/// The choir sheet alone: what to rehearse first, and the systems in which it stands. The kind in the options
/// is not looked at. The choir must outlive it.
struct ChoirSheet {
    plan::Choir const& choir;
};
std::vector<Page> lay_out(ChoirSheet const& sheet, ChartOptions const& options, TextMeasurer const& measurer);
std::vector<Document> draw_svg(ChoirSheet const& sheet, ChartOptions const& options,
                               TextMeasurer const& measurer);
std::vector<Document> draw(ChoirSheet const& sheet, ChartOptions const& options, Form form);

/// The choir sheet, then the charts of each part, from the top of the score down, as lay_out gives them for
/// its plan alone; of a kind asked for only these. Throws InputError as that does.
std::vector<Page> lay_out(plan::Choir const& choir, ChartOptions const& options,
                          TextMeasurer const& measurer);
std::vector<Document> draw_svg(plan::Choir const& choir, ChartOptions const& options,
                               TextMeasurer const& measurer);
std::vector<Document> draw(plan::Choir const& choir, ChartOptions const& options, Form form);

} // namespace vowelway::chart
