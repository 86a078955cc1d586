// SPDX-License-Identifier: MIT
#include "chart/charts/probe_map/probe_marks.hpp"

#include "chart/canvas/style.hpp"

namespace vowelway::chart {
namespace {

Path shape_of(analysis::ProbeKind kind, Point c, double r) {
    Path shape;
    switch (kind) {
    case analysis::ProbeKind::whisper:
        shape.circle(c, r);
        break;
    case analysis::ProbeKind::creak:
        shape.rectangle({c.x - 0.88 * r, c.y - 0.88 * r, 1.76 * r, 1.76 * r});
        break;
    case analysis::ProbeKind::sung:
    case analysis::ProbeKind::spoken:
        shape.move({c.x, c.y - 1.2 * r})
            .line({c.x + 1.1 * r, c.y + 0.8 * r})
            .line({c.x - 1.1 * r, c.y + 0.8 * r})
            .close();
        break;
    }
    return shape;
}

} // namespace

void draw_single_take(Canvas& canvas, analysis::ProbeKind kind, Point at) {
    auto const shape = shape_of(kind, at, 2.0);
    canvas.fill(shape, ink::white);
    canvas.stroke(shape, {.width = 0.7, .color = ink::black});
}

void draw_pooled_takes(Canvas& canvas, analysis::ProbeKind kind, Point at) {
    canvas.fill(shape_of(kind, at, 4.6), ink::white);
    canvas.fill(shape_of(kind, at, 3.6), ink::black);
}

void draw_target_mark(Canvas& canvas, Point c) {
    constexpr double r = 4.4;
    canvas.stroke(
        Path().move({c.x, c.y - r}).line({c.x + r, c.y}).line({c.x, c.y + r}).line({c.x - r, c.y}).close(),
        {.width = 1.1, .color = ink::modify});
    canvas.line({c.x - 1.3, c.y}, {c.x + 1.3, c.y}, {.width = 0.9, .color = ink::modify});
    canvas.line({c.x, c.y - 1.3}, {c.x, c.y + 1.3}, {.width = 0.9, .color = ink::modify});
}

void draw_cross(Canvas& canvas, Point c) {
    canvas.line({c.x - 2.6, c.y}, {c.x + 2.6, c.y}, {.width = 0.8, .color = ink::first});
    canvas.line({c.x, c.y - 2.6}, {c.x, c.y + 2.6}, {.width = 0.8, .color = ink::first});
}

} // namespace vowelway::chart
