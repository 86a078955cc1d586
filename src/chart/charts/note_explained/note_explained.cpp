// SPDX-License-Identifier: MIT
// One note explained: what the harmonics are with the shape kept and changed, where the resonances lie, what
// the tract does, and what each shape costs.
#include "chart/charts/charts.hpp"
#include "chart/charts/note_explained/panel.hpp"
#include "chart/charts/note_explained/panels.hpp"
#include "chart/page/title.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <cmath>

namespace vowelway::chart {
namespace {

void draw_legend(Canvas& canvas, plan::NoteExplanation const& e, double x, double y) {
    auto const style = plain(type::label);
    auto const say = [&](double sample, std::string_view text) {
        canvas.write({x + sample + 4, y}, text, style);
        x += sample + 4 + canvas.measurer().measure(text, style).advance + 14;
    };
    canvas.fill(Box{x, y - 7, 5, 8}, kept_ink);
    canvas.line({x + 8, y - 3}, {x + 24, y - 3}, kept_pen());
    say(24, worded("the vowel's own shape"));
    if (e.changed) {
        canvas.stroke(Path().rectangle({x + 0.35, y - 6.65, 4.3, 7.3}), {.width = 0.7, .color = changed_ink});
        canvas.line({x + 8, y - 3}, {x + 24, y - 3}, changed_pen());
        say(24, worded("changed as advised"));
    }
    canvas.fill(Box{x, y - 8, 18, 9}, ink::first_wash);
    canvas.line({x + 9, y - 8}, {x + 9, y + 1}, {.width = 0.8, .color = ink::first});
    say(18, worded("resonance ± its uncertainty"));
}

} // namespace

Page note_explained(plan::NoteExplanation const& e, Size paper, TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side;
    Page page{paper, Drawing(measurer)};
    auto& canvas = page.drawing;
    auto head = head_of(e.singer, e.technique);
    head.title =
        worded("Bar {0}, beat {1}", e.note.measure, fmt::format("{:g}", std::round(e.note.beat * 100) / 100));
    head.aside = e.title + (e.title.empty() || e.composer.empty() ? "" : ", ") + e.composer;
    draw_margins(canvas, head, worded("one note explained"), paper, 1, 1);
    Drawing top(measurer);
    double used = draw_title(top, head, width);
    used = draw_verdict(top, e, used - 4, width);
    top.replay(canvas, {margin_side, margin_top});

    double y = margin_top + used + 14;
    draw_legend(canvas, e, margin_side, y);
    y += 10;
    double const room = paper.height - margin_bottom - 6 - y, gap = 10;
    double const first = (room - 2 * gap) * 0.34, second = (room - 2 * gap) * 0.34,
                 third = room - 2 * gap - first - second;
    draw_spectrum(canvas, e, {margin_side, y, width, first});
    y += first + gap;
    draw_resonances(canvas, e, {margin_side, y, width, second});
    y += second + gap;
    double const left = (width - 20) * 0.5;
    draw_tract(canvas, e, {margin_side, y, left, third});
    draw_cost(canvas, e, {margin_side + left + 20, y, width - left - 20, third});
    return page;
}

} // namespace vowelway::chart
