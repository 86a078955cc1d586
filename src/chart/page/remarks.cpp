// SPDX-License-Identifier: MIT
#include "chart/page/remarks.hpp"

#include "chart/page/marks.hpp"
#include "chart/page/text.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

namespace vowelway::chart {

void draw_remarks(Canvas& canvas, plan::Plan const& plan, double x, double y, double width, double bottom) {
    constexpr double line = 11;
    if (plan.remarks.empty() || y + 17 + 2 * line > bottom) return;
    y = draw_heading(canvas, x, y, width, worded("What was assumed")) + 2;
    auto const style = plain(type::label);
    std::size_t said = 0;
    for (auto const& remark : plan.remarks) {
        auto const lines =
            wrapped(canvas.measurer(), std::string(reworded(to_string(remark.kind))) + ": " + remark.text,
                    style, width);
        bool const last = said + 1 == plan.remarks.size();
        if (y + line * static_cast<double>(lines.size() + (last ? 0 : 1)) > bottom) break;
        for (auto const& text : lines)
            canvas.write({x, y += line}, fitted(canvas.measurer(), text, style, width), style);
        ++said;
    }
    if (said < plan.remarks.size())
        canvas.write({x, y + line}, worded("and {0} more, in the plan's table", plan.remarks.size() - said),
                     slanted(type::label, ink::soft));
}

} // namespace vowelway::chart
