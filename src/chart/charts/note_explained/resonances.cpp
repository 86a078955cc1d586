// SPDX-License-Identifier: MIT
#include "chart/charts/note_explained/panels.hpp"

#include "chart/charts/note_explained/panel.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <tuple>

namespace vowelway::chart {
namespace {

/// A resonance and one deviation to each side; kept: filled and named, changed: dashed.
void draw_resonance(Canvas& canvas, Panel const& p, Resonance const& r, Ink color, Ink wash, bool changed) {
    double const x = p.x(in_hertz(r.centre)), from = std::max(p.box.left, p.x(in_hertz(r.centre - r.sd))),
                 to = std::min(p.box.right(), p.x(in_hertz(r.centre + r.sd)));
    if (!changed) canvas.fill(Box{from, p.box.top, to - from, p.box.height}, wash);
    auto const upright = [&](double at, double top, Pen pen) {
        if (changed)
            pen.color = changed_ink;
        else
            pen.dashes.clear();
        canvas.line({at, top}, {at, p.box.bottom()}, pen);
    };
    for (double const edge : {from, to})
        upright(edge, p.box.top, {.width = 0.4, .color = color, .dashes = {1.2, 1.6}});
    upright(x, p.box.top - 3, {.width = 0.8, .color = color, .dashes = {4, 1.8}});
}

std::string value_of(Resonance const& r) {
    return fmt::format("{:.0f} ±{:.0f} Hz", std::round(in_hertz(r.centre) / 10) * 10,
                       std::max(5.0, std::round(in_hertz(r.sd) / 5) * 5));
}

/// Where a resonance stays, it is told and drawn once.
bool moves(Resonance const& from, Resonance const& to) {
    return std::abs(in_hertz(to.centre - from.centre)) >= 5;
}

void draw_curve(Canvas& canvas, Panel const& p, plan::NoteExplanation const& e,
                plan::ShapeExplained const& shape, Pen const& pen) {
    Path path;
    for (std::size_t i = 0; i < e.grid.size(); ++i) {
        Point const at{p.x(in_hertz(e.grid[i])), p.held(shape.curve[i].value)};
        if (i == 0)
            path.move(at);
        else
            path.line(at);
    }
    canvas.stroke(path, pen);
}

void scale_to_curves(Panel& p, plan::NoteExplanation const& e) {
    double high = 10, low = -10;
    for (auto const* shape : shapes_of(e))
        for (auto const& gain : shape->curve)
            high = std::max(high, gain.value), low = std::min(low, gain.value);
    p.y_to = std::ceil(high / 10) * 10;
    p.y_from = std::max(std::floor(low / 10) * 10, p.y_to - 70);
}

/// fR1 and fR2 with their names; returns what is to be said of them.
std::string draw_first_two(Canvas& canvas, Panel const& p, plan::NoteExplanation const& e, double top) {
    LabelPlacer labels({p.box.left, top, p.box.width, 17});
    std::string told;
    for (auto const& [name, member, color, wash] :
         {std::tuple{"fR1", &plan::ShapeExplained::r1, ink::first, ink::first_wash},
          {"fR2", &plan::ShapeExplained::r2, ink::second, ink::second_wash}}) {
        auto const& kept = e.kept.*member;
        draw_resonance(canvas, p, kept, color, wash, false);
        place_label(canvas, labels, {p.x(in_hertz(kept.centre)), p.box.top - 9}, name,
                    bold(type::label, color), 3);
        told += fmt::format("{}{} {}", told.empty() ? "" : "     ", name, value_of(kept));
        if (!e.changed || !moves(kept, (*e.changed).*member)) continue;
        draw_resonance(canvas, p, (*e.changed).*member, color, wash, true);
        told += ", " + worded("changed {0}", value_of((*e.changed).*member));
    }
    return told;
}

} // namespace

void draw_resonances(Canvas& canvas, plan::NoteExplanation const& e, Box const& area) {
    double const top = draw_panel_heading(canvas, area, worded("Resonances of the tract"));
    Panel p{.box = {area.left + 26, top + 19, area.width - 26, area.bottom() - top - 19 - 24},
            .x_to = longest_spectrum};
    scale_to_curves(p, e);
    draw_scale_y(canvas, p, 20, "dB");
    auto const told = draw_first_two(canvas, p, e, top);
    canvas.write({area.right(), area.top + 10}, told, plain(type::label), Align::right);
    draw_curve(canvas, p, e, e.kept, kept_pen());
    if (e.changed) draw_curve(canvas, p, e, *e.changed, changed_pen());
    // Where the harmonics stand, so that one sees which resonance has one.
    for (auto const& f : e.harmonics) {
        double const x = p.x(in_hertz(f));
        canvas.line({x, p.box.bottom()}, {x, p.box.bottom() - 6}, {.width = 1, .color = ink::black});
    }
    draw_floor(canvas, p);
    draw_scale_x(canvas, p, 500, 1000, "kHz");
    draw_panel_caption(canvas, area,
                       worded("gain of the tract for a sung note, blurred by vibrato; ticks: the harmonics"));
}

} // namespace vowelway::chart
