// SPDX-License-Identifier: MIT
// The plane of fR1 (down the page, as vowels open) and fR2 (leftwards, as they go to the front): a frame
// shared by the charts that put vowels or probes into it.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/core/pitch.hpp"
#include "vowelway/core/resonance.hpp"

#include <cmath>
#include <span>

namespace vowelway::chart {

/// Two resonances: a place in the plane.
struct Spot {
    Resonance r1, r2;
};

struct Plane {
    Box box;
    double r1_low = 200, r1_high = 1200, r2_low = 500, r2_high = 3000; ///< hertz
    double x(double r2) const {
        return box.right() - box.width * std::log(r2 / r2_low) / std::log(r2_high / r2_low);
    }
    double y(double r1) const {
        return box.top + box.height * std::log(r1 / r1_low) / std::log(r1_high / r1_low);
    }
    Point at(Spot const& spot) const { return {x(in_hertz(spot.r2.centre)), y(in_hertz(spot.r1.centre))}; }
};

/// A plane in `box` that holds all spots with their deviations and a margin.
Plane plane_around(std::span<Spot const> spots, Box box);

/// An ellipse of one standard deviation; its half axes differ from side to side, the scale being logarithmic.
Path ellipse(Plane const& plane, Spot const& spot);

/// The frame: hertz below and at the left, the same as pitches above and at the right. Labels need 24 above,
/// 26 beside, 25 below.
void draw_axes(Canvas& canvas, Plane const& plane, Tuning const& tuning);

/// From one place to another; nothing when they are closer than its head.
void draw_arrow(Canvas& canvas, Point from, Point to);

} // namespace vowelway::chart
