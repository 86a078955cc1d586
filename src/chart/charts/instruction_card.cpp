// SPDX-License-Identifier: MIT
// A card of instructions: a title, a line that stands large, headings and points.
#include "chart/charts/instruction_card.hpp"
#include "chart/canvas/style.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/one_page.hpp"
#include "chart/page/text.hpp"
#include "vowelway/core/wording.hpp"

namespace vowelway::chart {
namespace {

double draw_part(Canvas& canvas, analysis::RecordingCard::Part const& part, double y, double width) {
    y = draw_heading(canvas, 0, y + 12, width, part.heading) + 4;
    for (auto const& point : part.points) {
        canvas.write({2, y + 14}, "–", plain(type::body));
        y = paragraph(canvas, 14, y + 2, width - 14, point, plain(type::body), 12) + 2;
    }
    return y;
}

} // namespace

Page instruction_card(analysis::RecordingCard const& card, Size paper, TextMeasurer const& measurer) {
    Head head;
    head.title = card.title;
    return on_one_page(head, worded("card"), paper, measurer, [&](Canvas& canvas, double width) {
        double y = 17;
        canvas.write({0, y}, fitted(canvas.measurer(), head.title, bold(type::title), width),
                     bold(type::title));
        canvas.line({0, y + 6}, {width, y + 6}, {.width = 1.2, .color = ink::black});
        y = paragraph(canvas, 0, y + 18, width, card.vowels, bold(type::heading), 16);
        for (auto const& part : card.parts) y = draw_part(canvas, part, y, width);
        return y;
    });
}

} // namespace vowelway::chart
