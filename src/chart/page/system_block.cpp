// SPDX-License-Identifier: MIT
#include "chart/page/system_block.hpp"

#include "chart/page/advice_rows.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/over_staff.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <utility>

namespace vowelway::chart {

BlockMaker::BlockMaker(plan::Plan const& plan, Staff const& staff, std::map<std::size_t, int> const& watched,
                       TextMeasurer const& measurer)
    : plan_(&plan), staff_(&staff), watched_(&watched), measurer_(&measurer), engraver_(staff) {}

Block BlockMaker::make(System const& system) {
    Drawing upper(*measurer_), lower(*measurer_);
    engraver_.draw(system, upper);
    draw_over_staff(system, *staff_, *watched_, upper);
    double const lane = words_.draw(system, upper);

    auto sounding = soundings_of(system);
    double const rail = rail_height + 3;
    lower.write({-4, rail - 4.2}, worded("zone"), slanted(type::small, ink::soft), Align::right);
    lower.write({-4, rail + 8}, worded("do"), slanted(type::small, ink::soft), Align::right);
    double const height = draw_advice(*plan_, sounding, system.width, rail, lower);
    double const top = upper.top(-1e6, 1e6, 0);
    return {std::move(upper), top, lane, std::move(sounding), system.width, std::move(lower), height};
}

void Block::draw(Canvas& canvas, plan::Plan const& plan, LaneScale const& scale, Point at) const {
    double const y = at.y - top;
    upper.replay(canvas, {at.x, y});
    Drawing middle(canvas.measurer());
    draw_lane(middle, plan, soundings, scale, width);
    middle.replay(canvas, {at.x, y + lane});
    lower.replay(canvas, {at.x, y + lane + scale.height});
}

} // namespace vowelway::chart
