// SPDX-License-Identifier: MIT
// A strip of the pitch-by-vowel plan: one vowel, pitch upwards.
#pragma once

#include "chart/page/pitch_axis.hpp"
#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/plan.hpp"

namespace vowelway::chart {

inline constexpr double rim = 5;

struct Strip {
    plan::VowelPlan const* vowel = nullptr;
    double left = 0, width = 0;
    bool narrow() const { return width < 46; }
    double rim_width() const { return narrow() ? 4 : rim; }
    double body_left() const { return left + rim_width() + 1.2; }
    double body_right() const { return left + width - heard_width() - 1; }
    double heard_width() const { return narrow() ? 11 : 12.5; }
    double tick() const { return body_right() - 3; } ///< left end of the ticks of the crossings
    double heard_x() const { return left + width - heard_width() / 2; }
};

/// Textures of the zones, the rim of the advice, bars of the time sung (`most` seconds as wide as the strip),
/// what is heard, the crossings of harmonics and resonances.
void draw_strip(Canvas& canvas, Strip const& strip, PitchAxis const& axis, double most);

/// The rim as it is drawn for an advice.
void draw_rim_of(Canvas& canvas, Box const& box, plan::Advice advice);

} // namespace vowelway::chart
