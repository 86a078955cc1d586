// SPDX-License-Identifier: MIT
#include "chart/page/resonance_plane.hpp"

#include "chart/canvas/style.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace vowelway::chart {

Plane plane_around(std::span<Spot const> spots, Box box) {
    Plane p{.box = box};
    double r1_low = 1e9, r1_high = 0, r2_low = 1e9, r2_high = 0;
    for (auto const& [r1, r2] : spots) {
        r1_low = std::min(r1_low, in_hertz(r1.centre - r1.sd));
        r1_high = std::max(r1_high, in_hertz(r1.centre + r1.sd));
        r2_low = std::min(r2_low, in_hertz(r2.centre - r2.sd));
        r2_high = std::max(r2_high, in_hertz(r2.centre + r2.sd));
    }
    if (r1_high == 0) return p;
    p.r1_low = std::max(60.0, r1_low) / 1.12;
    p.r1_high = r1_high * 1.12;
    p.r2_low = std::max(120.0, r2_low) / 1.1;
    p.r2_high = r2_high * 1.1;
    return p;
}

Path ellipse(Plane const& plane, Spot const& spot) {
    auto const& [r1, r2] = spot;
    double const x0 = plane.x(in_hertz(r2.centre)), y0 = plane.y(in_hertz(r1.centre));
    double const left = x0 - plane.x(in_hertz(r2.centre + r2.sd)),
                 right = plane.x(std::max(20.0, in_hertz(r2.centre - r2.sd))) - x0;
    double const up = y0 - plane.y(std::max(20.0, in_hertz(r1.centre - r1.sd))),
                 down = plane.y(in_hertz(r1.centre + r1.sd)) - y0;
    double const k = 0.5523;
    Path path;
    path.move({x0 + right, y0});
    path.curve({x0 + right, y0 + k * down}, {x0 + k * right, y0 + down}, {x0, y0 + down});
    path.curve({x0 - k * left, y0 + down}, {x0 - left, y0 + k * down}, {x0 - left, y0});
    path.curve({x0 - left, y0 - k * up}, {x0 - k * left, y0 - up}, {x0, y0 - up});
    path.curve({x0 + k * right, y0 - up}, {x0 + right, y0 - k * up}, {x0 + right, y0});
    return path.close();
}

void draw_axes(Canvas& canvas, Plane const& plane, Tuning const& tuning) {
    auto const& b = plane.box;
    canvas.fill(b, ink::wash);
    auto const style = plain(type::small, ink::soft);
    for (double const hz : {100, 150, 200, 250, 300, 350, 400, 450, 500, 600, 700, 800, 1000, 1200, 1500}) {
        if (hz < plane.r1_low || hz > plane.r1_high) continue;
        canvas.line({b.left - 3, plane.y(hz)}, {b.left, plane.y(hz)}, {.width = 0.6, .color = ink::soft});
        canvas.write({b.left - 5, plane.y(hz) + 2.6}, fmt::format("{:.0f}", hz), style, Align::right);
    }
    for (double const hz : {300, 400, 500, 600, 700, 800, 1000, 1200, 1500, 1800, 2200, 2600, 3200, 4000}) {
        if (hz < plane.r2_low || hz > plane.r2_high) continue;
        canvas.line({plane.x(hz), b.bottom()}, {plane.x(hz), b.bottom() + 3},
                    {.width = 0.6, .color = ink::soft});
        canvas.write({plane.x(hz), b.bottom() + 11}, fmt::format("{:.0f}", hz), style, Align::centre);
    }
    // The same as pitches, on the other sides.
    for (int key = 24; key <= 108; ++key) {
        auto const name = tuning.name(tuning.pitch(key)).pitch;
        bool const shown = name.alter == 0 && name.step != 'B' && name.step != 'E';
        if (!shown) continue;
        double const hz = in_hertz(tuning.pitch(key).frequency());
        if (hz > plane.r1_low && hz < plane.r1_high) {
            canvas.line({b.right(), plane.y(hz)}, {b.right() + 3, plane.y(hz)},
                        {.width = 0.6, .color = ink::soft});
            canvas.write({b.right() + 5, plane.y(hz) + 2.6}, name.str(), style);
        }
        if (hz > plane.r2_low && hz < plane.r2_high) {
            canvas.line({plane.x(hz), b.top - 3}, {plane.x(hz), b.top}, {.width = 0.6, .color = ink::soft});
            canvas.write({plane.x(hz), b.top - 5}, name.str(), style, Align::centre);
        }
    }
    canvas.write({b.left, b.bottom() + 23}, worded("front  ←   fR2 in Hz   →  back"), plain(type::label));
    canvas.write({b.left, b.top - 17}, worded("close  ↑   fR1 in Hz   ↓  open"), plain(type::label));
    canvas.stroke(Path().rectangle(b), {.width = 0.7, .color = ink::soft});
}

void draw_arrow(Canvas& canvas, Point from, Point to) {
    double const dx = to.x - from.x, dy = to.y - from.y, length = std::hypot(dx, dy);
    if (length < 3) return;
    double const ux = dx / length, uy = dy / length, head = std::min(7.0, length * 0.6);
    canvas.line(from, {to.x - ux * head * 0.8, to.y - uy * head * 0.8}, {.width = 1.3, .color = ink::modify});
    Point const base{to.x - ux * head, to.y - uy * head};
    canvas.fill(Path()
                    .move(to)
                    .line({base.x - uy * head * 0.4, base.y + ux * head * 0.4})
                    .line({base.x + uy * head * 0.4, base.y - ux * head * 0.4})
                    .close(),
                ink::modify);
}

} // namespace vowelway::chart
