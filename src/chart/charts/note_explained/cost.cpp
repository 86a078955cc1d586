// SPDX-License-Identifier: MIT
#include "chart/charts/note_explained/panels.hpp"

#include "chart/charts/note_explained/panel.hpp"
#include "chart/page/marks.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

namespace vowelway::chart {
namespace {

/// Rows of words, bars and numbers within an area.
struct CostBars {
    Canvas& canvas;
    Box area;
    bool both = false;           ///< kept and changed
    double words = 0;            ///< room for the words
    double from = 0, length = 0; ///< of the bars
    double high = 0.2, row = 0;  ///< the cost as long as `length`; height of a row

    void draw(std::string_view text, double kept, double changed, bool total, double y) const {
        auto const style = total ? bold(type::label) : plain(type::label);
        double const thick = std::min(5.5, row * 0.32), middle = y + row / 2;
        canvas.write({area.left, middle + 3}, fitted(canvas.measurer(), text, style, words - 4), style);
        double const upper = both ? middle - thick - 0.5 : middle - thick / 2;
        if (kept > 0.001) canvas.fill(Box{from, upper, std::max(0.6, length * kept / high), thick}, kept_ink);
        if (both && changed > 0.001)
            canvas.stroke(Path().rectangle({from + 0.35, middle + 0.85,
                                            std::max(0.6, length * changed / high - 0.7), thick - 0.7}),
                          {.width = 0.7, .color = changed_ink});
        draw_figures(kept, changed, total, middle + 2.6);
    }

    void draw_figures(double kept, double changed, bool total, double baseline) const {
        auto figures = total ? bold(type::small) : plain(type::small);
        canvas.write({both ? area.right() - 22 : area.right(), baseline}, fmt::format("{:.2f}", kept),
                     figures, Align::right);
        if (!both) return;
        figures.color = changed_ink;
        canvas.write({area.right(), baseline}, fmt::format("{:.2f}", changed), figures, Align::right);
    }
};

CostBars bars_in(Canvas& canvas, plan::NoteExplanation const& e, Box const& area, double y) {
    CostBars bars{.canvas = canvas, .area = area, .both = e.changed.has_value()};
    for (auto const* shape : shapes_of(e)) bars.high = std::max(bars.high, shape->cost.total());
    double const numbers = bars.both ? 42 : 22;
    bars.words = std::min(108.0, area.width * 0.44);
    bars.from = area.left + bars.words;
    bars.length = area.width - bars.words - numbers - 4;
    bars.row =
        std::min(22.0, (area.bottom() - 14 - y) / static_cast<double>(plan::cost_term_names.size() + 1));
    return bars;
}

} // namespace

void draw_cost(Canvas& canvas, plan::NoteExplanation const& e, Box const& area) {
    double y = draw_panel_heading(canvas, area, worded("What it costs")) + 2;
    auto const bars = bars_in(canvas, e, area, y);
    plan::CostTerms const none;
    auto const& changed = e.changed ? e.changed->cost : none;
    for (auto const& term : plan::cost_term_names) {
        bars.draw(reworded(term.words), e.kept.cost.*term.value, changed.*term.value, false, y);
        y += bars.row;
    }
    canvas.line({area.left, y}, {area.right(), y}, {.width = 0.4, .color = ink::rule});
    bars.draw(worded("total"), e.kept.cost.total(), changed.total(), true, y);
    y += bars.row;
    canvas.line({bars.from, area.top + 20}, {bars.from, y}, {.width = 0.5, .color = ink::rule});
    auto const note = slanted(type::small, ink::soft);
    canvas.write({area.left, area.bottom() - 1},
                 fitted(canvas.measurer(),
                        worded("1: a clear loss of the vowel for a second; the lower total wins"), note,
                        area.width),
                 note);
}

} // namespace vowelway::chart
