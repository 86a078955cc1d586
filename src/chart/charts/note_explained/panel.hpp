// SPDX-License-Identifier: MIT
// A panel of the chart of one note: a frame with a scale along each side. Kept is filled and solid, changed
// is outlined and dashed, on every panel.
#pragma once

#include "chart/canvas/label_placer.hpp"
#include "chart/canvas/style.hpp"
#include "vowelway/plan/explain.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

namespace vowelway::chart {

inline constexpr double longest_spectrum = 5150; ///< hertz: a little beyond the last harmonic
inline constexpr Ink kept_ink = ink::soft, changed_ink = ink::modify;
inline Pen kept_pen() { return {.width = 1.2, .color = kept_ink, .dashes = {}}; }
inline Pen changed_pen() { return {.width = 1.2, .color = changed_ink, .dashes = {4, 1.8}}; }

struct Panel {
    Box box;
    double x_from = 0, x_to = 1, y_from = 0, y_to = 1;
    double x(double v) const { return box.left + box.width * (v - x_from) / (x_to - x_from); }
    double y(double v) const { return box.bottom() - box.height * (v - y_from) / (y_to - y_from); }
    double held(double v) const { return y(std::clamp(v, y_from, y_to)); }
};

/// The shape kept, and the changed one where there is one.
std::vector<plan::ShapeExplained const*> shapes_of(plan::NoteExplanation const& e);

/// Returns where what follows begins.
double draw_panel_heading(Canvas& canvas, Box const& box, std::string_view text);
/// In the last line of a panel, what it shows.
void draw_panel_caption(Canvas& canvas, Box const& area, std::string_view text);
/// Lines and numbers of the upright scale.
void draw_scale_y(Canvas& canvas, Panel const& p, double step, std::string_view unit);
void draw_scale_x(Canvas& canvas, Panel const& p, double step, double shown_as, std::string_view unit);
void draw_floor(Canvas& canvas, Panel const& p);

/// A label where it is wished, or as near as there is room; nothing where there is none.
void place_label(Canvas& canvas, LabelPlacer& labels, Point centre, std::string_view text,
                 TextStyle const& style, double most);

} // namespace vowelway::chart
