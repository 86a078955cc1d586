// SPDX-License-Identifier: MIT
#include "chart/charts/note_explained/panel.hpp"

#include <fmt/format.h>

#include <cmath>

namespace vowelway::chart {

std::vector<plan::ShapeExplained const*> shapes_of(plan::NoteExplanation const& e) {
    std::vector<plan::ShapeExplained const*> shapes{&e.kept};
    if (e.changed) shapes.push_back(&*e.changed);
    return shapes;
}

void draw_panel_caption(Canvas& canvas, Box const& area, std::string_view text) {
    canvas.write({area.right(), area.bottom() - 1}, text, slanted(type::small, ink::soft), Align::right);
}

void draw_floor(Canvas& canvas, Panel const& p) {
    canvas.line({p.box.left, p.box.bottom()}, {p.box.right(), p.box.bottom()},
                {.width = 0.7, .color = ink::soft});
}

double draw_panel_heading(Canvas& canvas, Box const& box, std::string_view text) {
    canvas.write({box.left, box.top + 10}, text, bold(type::heading));
    canvas.line({box.left, box.top + 14.5}, {box.right(), box.top + 14.5},
                {.width = 0.8, .color = ink::black});
    return box.top + 18;
}

void draw_scale_y(Canvas& canvas, Panel const& p, double step, std::string_view unit) {
    auto const style = plain(type::small, ink::soft);
    for (double v = std::ceil(p.y_from / step) * step; v <= p.y_to + 1e-9; v += step) {
        canvas.line({p.box.left, p.y(v)}, {p.box.right(), p.y(v)}, {.width = 0.4, .color = ink::hair});
        canvas.write({p.box.left - 4, p.y(v) + 2.6}, fmt::format("{:g}", v + 0.0), style, Align::right);
    }
    canvas.write({p.box.left - 4, p.box.top - 8}, unit, style, Align::right);
}

void draw_scale_x(Canvas& canvas, Panel const& p, double step, double shown_as, std::string_view unit) {
    auto const style = plain(type::small, ink::soft);
    double const last = p.x_to - (p.x_to - p.x_from) * 0.04;
    for (double v = p.x_from; v <= last; v += step) {
        canvas.line({p.x(v), p.box.bottom()}, {p.x(v), p.box.bottom() + 3},
                    {.width = 0.6, .color = ink::soft});
        canvas.write({p.x(v), p.box.bottom() + 11}, fmt::format("{:g}", v / shown_as), style, Align::centre);
    }
    canvas.write({p.box.right(), p.box.bottom() + 11}, unit, style, Align::right);
}

void place_label(Canvas& canvas, LabelPlacer& labels, Point centre, std::string_view text,
                 TextStyle const& style, double most) {
    auto const e = canvas.measurer().measure(text, style);
    Box const wish{centre.x - (e.right - e.left) / 2, centre.y - (e.above + e.below) / 2, e.right - e.left,
                   e.above + e.below};
    if (auto const spot = labels.find(wish, most))
        canvas.text({spot->left - e.left, spot->top + e.above}, text, style);
}

} // namespace vowelway::chart
