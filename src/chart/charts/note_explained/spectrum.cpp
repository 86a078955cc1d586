// SPDX-License-Identifier: MIT
#include "chart/charts/note_explained/panels.hpp"

#include "chart/charts/note_explained/panel.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::chart {
namespace {

/// 70 dB under the loudest harmonic.
void scale_to_harmonics(Panel& p, plan::NoteExplanation const& e) {
    double high = -200;
    for (auto const* shape : shapes_of(e))
        for (auto const& level : shape->harmonics) high = std::max(high, level.value);
    p.y_to = std::ceil((high + 3) / 10) * 10;
    p.y_from = p.y_to - 70;
}

void draw_bars(Canvas& canvas, Panel const& p, plan::NoteExplanation const& e, double wide) {
    // Without a change the one bar stands on the frequency itself.
    double const shift = e.changed ? wide * 0.06 : -wide / 2;
    for (std::size_t i = 0; i < e.harmonics.size(); ++i) {
        double const x = p.x(in_hertz(e.harmonics[i])), y = p.held(e.kept.harmonics[i].value);
        if (y < p.box.bottom() - 0.3)
            canvas.fill(Box{e.changed ? x - wide - shift : x + shift, y, wide, p.box.bottom() - y}, kept_ink);
        if (!e.changed) continue;
        double const z = p.held(e.changed->harmonics[i].value);
        if (z < p.box.bottom() - 0.3)
            canvas.stroke(
                Path().rectangle({x + shift + 0.35, z + 0.35, wide - 0.7, p.box.bottom() - z - 0.35}),
                {.width = 0.7, .color = changed_ink});
    }
}

/// Every one where there is room, else every second, fifth or tenth.
void name_harmonics(Canvas& canvas, Panel const& p, plan::NoteExplanation const& e, double apart) {
    LabelPlacer labels({p.box.left, p.box.bottom(), p.box.width + 14, 15});
    std::size_t every = 1;
    for (std::size_t const wider : {2, 5, 10})
        if (apart * static_cast<double>(every) < 26) every = wider;
    for (std::size_t i = 0; i < e.harmonics.size(); ++i)
        if (i == 0 || (i + 1) % every == 0)
            place_label(canvas, labels, {p.x(in_hertz(e.harmonics[i])), p.box.bottom() + 8},
                        Harmonic{static_cast<int>(i) + 1}.str(),
                        i < 2 ? bold(type::small) : plain(type::small, ink::soft), 0);
}

} // namespace

void draw_spectrum(Canvas& canvas, plan::NoteExplanation const& e, Box const& area) {
    double const top = draw_panel_heading(canvas, area, worded("Harmonics"));
    Panel p{.box = {area.left + 26, top + 14, area.width - 26, area.bottom() - top - 40},
            .x_to = longest_spectrum};
    scale_to_harmonics(p, e);
    draw_scale_y(canvas, p, 10, "dB");
    double const apart = p.x(in_hertz(e.note.pitch.frequency())) - p.x(0);
    draw_bars(canvas, p, e, std::clamp(apart * 0.3, 1.4, 6.0));
    draw_floor(canvas, p);
    name_harmonics(canvas, p, e, apart);
    draw_panel_caption(canvas, area, worded("level of each harmonic, 1 m from the mouth in the open"));
}

} // namespace vowelway::chart
