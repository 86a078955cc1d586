// SPDX-License-Identifier: MIT
#include "chart/page/one_page.hpp"

#include "chart/canvas/style.hpp"

namespace vowelway::chart {

Page on_one_page(Head const& head, std::string_view what, Size paper, TextMeasurer const& measurer,
                 std::function<double(Canvas&, double)> const& draw) {
    for (double larger = 1.2;; larger -= 0.05) {
        Size const small{paper.width / larger, paper.height / larger};
        Drawing sheet(measurer);
        double const bottom = draw(sheet, small.width - 2 * margin_side);
        if (bottom > small.height - margin_top - margin_bottom && larger > 0.55) continue;
        Drawing page(measurer);
        draw_margins(page, head, what, small, 1, 1);
        sheet.replay(page, {margin_side, margin_top});
        Page out{paper, Drawing(measurer)};
        page.replay(out.drawing, {}, larger);
        return out;
    }
}

} // namespace vowelway::chart
