// SPDX-License-Identifier: MIT
#include "chart/charts/note_explained/panels.hpp"

#include "chart/charts/note_explained/panel.hpp"
#include "chart/page/marks.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace vowelway::chart {
namespace {

double radius(acoustics::TubeSection const& section) {
    return std::sqrt(in_square_centimetres(section.area) / std::numbers::pi);
}

/// The outline of a row of round tubes of these cross-sections, from the glottis to the open lips.
Path profile(Panel const& p, acoustics::AreaFunction const& tract) {
    Path path;
    for (double const side : {1.0, -1.0}) {
        double at = 0;
        path.move({p.x(0), p.y(0)});
        for (auto const& section : tract) {
            double const y = p.held(side * radius(section));
            path.line({p.x(at), y});
            at += in_centimetres(section.length);
            path.line({p.x(at), y});
        }
        path.line({p.x(at), p.y(0)});
    }
    return path;
}

void scale_to_tracts(Panel& p, plan::NoteExplanation const& e) {
    double length = 0, widest = 1;
    for (auto const* shape : shapes_of(e)) {
        length = std::max(length, in_centimetres(length_of(shape->tract)));
        for (auto const& section : shape->tract)
            widest = std::max(widest, std::ceil(2 * radius(section)) / 2);
    }
    p.x_to = length;
    p.y_from = -widest, p.y_to = widest;
}

void draw_centimetres(Canvas& canvas, Panel const& p) {
    auto const style = plain(type::small, ink::soft);
    double const whole = std::floor(p.y_to);
    for (double v = -whole; v <= whole; v += 1) {
        canvas.line({p.box.left, p.y(v)}, {p.box.right(), p.y(v)}, {.width = 0.4, .color = ink::hair});
        canvas.write({p.box.left - 4, p.y(v) + 2.6}, fmt::format("{:g}", std::abs(v)), style, Align::right);
    }
    canvas.write({p.box.left - 4, p.box.top - 8}, "cm", style, Align::right);
}

void draw_from_glottis_to_lips(Canvas& canvas, Panel const& p) {
    auto const style = plain(type::small, ink::soft);
    draw_floor(canvas, p);
    for (double v = 0; v <= p.x_to; v += 5)
        canvas.line({p.x(v), p.box.bottom()}, {p.x(v), p.box.bottom() + 3},
                    {.width = 0.6, .color = ink::soft});
    canvas.write({p.box.left, p.box.bottom() + 12}, worded("glottis"), style);
    canvas.write({p.box.right(), p.box.bottom() + 12}, worded("lips"), style, Align::right);
    canvas.write({p.box.left + p.box.width / 2, p.box.bottom() + 12}, worded("a tick is 5 cm"), style,
                 Align::centre);
}

/// What speaks against the model is said before what it is.
void draw_caption(Canvas& canvas, plan::NoteExplanation const& e, Box const& area) {
    auto const& objection = e.changed && !e.changed->tract_objection.empty() ? e.changed->tract_objection
                                                                             : e.kept.tract_objection;
    auto const note = slanted(type::small, objection.empty() ? ink::soft : ink::modify);
    auto const caption = objection.empty()
                             ? worded("as a round tube, radius in cm; one of many with these resonances")
                             : objection;
    canvas.write({area.left, area.bottom() - 1}, fitted(canvas.measurer(), caption, note, area.width), note);
}

} // namespace

void draw_tract(Canvas& canvas, plan::NoteExplanation const& e, Box const& area) {
    double const top = draw_panel_heading(canvas, area, worded("The shape of the tract"));
    Panel p{.box = {area.left + 26, top + 14, area.width - 30, area.bottom() - top - 14 - 36}};
    scale_to_tracts(p, e);
    draw_centimetres(canvas, p);
    auto const outline = profile(p, e.kept.tract);
    canvas.fill(outline, ink::hair);
    canvas.stroke(outline, {.width = 0.8, .color = kept_ink});
    if (e.changed) canvas.stroke(profile(p, e.changed->tract), changed_pen());
    draw_from_glottis_to_lips(canvas, p);
    draw_caption(canvas, e, area);
}

} // namespace vowelway::chart
