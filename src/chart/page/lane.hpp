// SPDX-License-Identifier: MIT
// The resonance lane: harmonics of the sung notes as stepped lines against the bands of fR1 and fR2.
#pragma once

#include "chart/page/soundings.hpp"
#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/plan.hpp"

#include <string>
#include <vector>

namespace vowelway::chart {

/// Frequencies up the page, logarithmic; the same in every lane of a sheet.
struct LaneScale {
    double low_hz = 100, high_hz = 2500;
    double height = 90;
    double y(Frequency f) const; ///< 0 at the top, clamped to the lane
    bool holds(Frequency f) const;
};
LaneScale lane_scale(plan::Plan const& plan, double height);

/// Left of the lane (and of the staff above it): names of the rows and of the pitches. Right of it: names of
/// the bands.
inline constexpr double gutter_left = 33, gutter_right = 17;

/// Below the lane a rail repeats the zone of each note, large enough to read.
inline constexpr double rail_height = 9;

/// The lane's top is at y = 0, the rail's bottom at scale.height + rail_height.
void draw_lane(Canvas& canvas, plan::Plan const& plan, std::vector<Sounding> const& soundings,
               LaneScale const& scale, double width);

} // namespace vowelway::chart
