// SPDX-License-Identifier: MIT
#include "chart/canvas/label_placer.hpp"

#include "core/ranges.hpp"

#include <algorithm>

namespace vowelway::chart {

bool LabelPlacer::free(Box const& box) const {
    bool const inside = box.left >= area_.left && box.right() <= area_.right() && box.top >= area_.top &&
                        box.bottom() <= area_.bottom();
    constexpr double clear = 1.2;
    Box const wide{box.left - clear, box.top - clear, box.width + 2 * clear, box.height + 2 * clear};
    return inside && ranges::none_of(taken_, [&](Box const& t) { return t.overlaps(wide); });
}

std::optional<Box> LabelPlacer::find(Box wished, double most) {
    for (double away = 0; away <= most; away += 1) {
        for (double const way : {-1.0, 1.0}) {
            Box box = wished;
            box.top += way * away;
            if (!free(box)) continue;
            taken_.push_back(box);
            return box;
        }
    }
    ++dropped_;
    return std::nullopt;
}

} // namespace vowelway::chart
