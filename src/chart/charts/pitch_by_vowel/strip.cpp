// SPDX-License-Identifier: MIT
#include "chart/charts/pitch_by_vowel/strip.hpp"

#include "chart/canvas/label_placer.hpp"
#include "chart/page/marks.hpp"
#include "core/ranges.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace vowelway::chart {
namespace {

constexpr int most_harmonics = 5; // crossings of higher ones crowd, and say little

void draw_zones(Canvas& canvas, Strip const& s, PitchAxis const& axis) {
    double const half = axis.row() / 2;
    auto const& cells = s.vowel->strip;
    for (std::size_t i = 0; i < cells.size();) {
        // Neighbours of one texture are drawn as one; the stipple changes with its density.
        auto const& first = cells[i].decision.zone;
        std::size_t j = i + 1;
        while (j < cells.size() && cells[j].decision.zone.zone == first.zone &&
               first.zone != plan::Zone::turning)
            ++j;
        double const top = axis.y(cells[j - 1].pitch) - half, bottom = axis.y(cells[i].pitch) + half;
        fill_zone(canvas, {s.body_left(), top, s.body_right() - s.body_left(), bottom - top}, first);
        i = j;
    }
}

/// What to do.
void draw_rim(Canvas& canvas, Strip const& s, PitchAxis const& axis) {
    double const half = axis.row() / 2;
    auto const& cells = s.vowel->strip;
    for (std::size_t i = 0; i < cells.size();) {
        auto const advice = cells[i].decision.advice;
        std::size_t j = i + 1;
        while (j < cells.size() && cells[j].decision.advice == advice) ++j;
        double const top = axis.y(cells[j - 1].pitch) - half, bottom = axis.y(cells[i].pitch) + half;
        draw_rim_of(canvas, {s.left, top, s.rim_width(), bottom - top}, advice);
        i = j;
    }
}

void draw_frame(Canvas& canvas, Strip const& s, PitchAxis const& axis) {
    canvas.stroke(
        Path().rectangle({s.body_left(), axis.top, s.body_right() - s.body_left(), axis.bottom - axis.top}),
        {.width = 0.6, .color = ink::soft});
}

double sung_length(Strip const& s, plan::PitchCell const& cell, double most) {
    if (in_seconds(cell.sung) <= 0 || most <= 0) return 0;
    return std::max(2.0, in_seconds(cell.sung) / most * (s.body_right() - s.body_left() - 2));
}

void draw_sung(Canvas& canvas, Strip const& s, PitchAxis const& axis, double most) {
    double const thick = std::clamp(axis.row() * 0.42, 3.0, 6.5);
    for (auto const& cell : s.vowel->strip) {
        double const length = sung_length(s, cell, most), y = axis.y(cell.pitch);
        if (length <= 0) continue;
        canvas.fill(Box{s.body_left() - 0.5, y - thick / 2 - 1, length + 1.5, thick + 2}, ink::white);
        canvas.fill(Box{s.body_left(), y - thick / 2, length, thick}, ink::black);
    }
}

/// Letters up the strip, wherever the heard vowel changes; the intended one stands at its foot.
void draw_heard(Canvas& canvas, Strip const& s, PitchAxis const& axis) {
    auto const& cells = s.vowel->strip;
    double const least = 11; // between two letters
    double last_y = 1e9;
    for (std::size_t i = 0; i < cells.size();) {
        auto const heard = cells[i].decision.heard.vowel.quality();
        std::size_t j = i + 1;
        while (j < cells.size() && cells[j].decision.heard.vowel.quality() == heard) ++j;
        double const bottom = axis.y(cells[i].pitch) + axis.row() / 2,
                     top = axis.y(cells[j - 1].pitch) - axis.row() / 2;
        bool const own = heard == s.vowel->resonances.vowel.quality();
        double const y = std::min((top + bottom) / 2 + 3, last_y - least);
        if (y > top + 5) {
            canvas.write({s.heard_x(), y}, heard.ipa(),
                         own ? plain(type::body, ink::soft) : bold(type::body, ink::migrate), Align::centre);
            last_y = y;
        }
        if (i > 0)
            canvas.line({s.heard_x() - 4, bottom}, {s.heard_x() + 4, bottom},
                        {.width = 0.5, .color = ink::rule});
        i = j;
    }
}

int rank(plan::Crossing const& c) {
    if (c.resonance.number == 1) return c.harmonic.number <= 2 ? 0 : c.harmonic.number;
    return 2 + c.harmonic.number + c.resonance.number * 2;
}

/// A tick as long as the uncertainty.
void draw_tick(Canvas& canvas, Strip const& s, PitchAxis const& axis, plan::Crossing const& c) {
    bool const weighty = rank(c) == 0, first = c.resonance.number == 1;
    auto const color = first ? ink::first : ink::second;
    double const x = s.tick(), y = axis.y(c.pitch), top = axis.clamped(c.pitch + c.sd),
                 bottom = axis.clamped(c.pitch - c.sd);
    Pen const pen{.width = weighty ? 1.3 : 0.8,
                  .color = color,
                  .dashes = first ? std::vector<double>{} : std::vector<double>{2, 1.2}};
    canvas.line({x + 1.2, top}, {x + 1.2, bottom}, {.width = pen.width + 1.6, .color = ink::white});
    canvas.line({x + 1.2, top}, {x + 1.2, bottom}, pen);
    for (double const end : {top, bottom})
        canvas.line({x - 0.4, end}, {x + 2.8, end}, {.width = 0.8, .color = color});
    if (weighty) canvas.line({s.body_left(), y}, {s.body_right(), y}, {.width = 1.1, .color = color});
}

/// "2fo=fR1", or "2fo" where that is too long.
void name_crossing(Canvas& canvas, Strip const& s, PitchAxis const& axis, plan::Crossing const& c,
                   LabelPlacer& placer) {
    bool const weighty = rank(c) == 0;
    auto const color = c.resonance.number == 1 ? ink::first : ink::second;
    auto const name = c.harmonic.str() + "=" + c.resonance.str();
    double const room = s.body_right() - s.body_left() - 5;
    auto const normal = plain(type::small, color), strong = bold(type::small, color);
    auto const fits = [&](std::string const& text, TextStyle const& style) {
        return canvas.measurer().measure(text, style).advance <= room;
    };
    auto const label = fits(name, normal) ? name : c.harmonic.str();
    auto const style = weighty && fits(label, strong) ? strong : normal;
    auto const extent = canvas.measurer().measure(label, style);
    double const y = axis.y(c.pitch);
    Box const wish{s.tick() - 1.2 - extent.right, y - (weighty ? extent.above + 2.4 : extent.above / 2),
                   extent.right - extent.left, extent.above + extent.below};
    if (auto const spot = placer.find(wish, weighty ? 24 : 9)) {
        canvas.fill(Box{spot->left - 1, spot->top - 0.6, spot->width + 2, spot->height + 1.2}, ink::white);
        canvas.text({spot->left - extent.left, spot->top + extent.above}, label, style);
    }
}

/// Names where there is room, the weightiest first.
void draw_crossings(Canvas& canvas, Strip const& s, PitchAxis const& axis, double most) {
    std::vector<plan::Crossing const*> order;
    for (auto const& c : s.vowel->crossings)
        if (c.harmonic.number <= most_harmonics && c.resonance.number <= 2) order.push_back(&c);
    ranges::stable_sort(order, {}, [](plan::Crossing const* c) { return rank(*c); });
    LabelPlacer placer(
        {s.body_left() + 0.6, axis.top + 1, s.body_right() - s.body_left() - 1, axis.bottom - axis.top - 2});
    for (auto const& cell : s.vowel->strip) // the bars of the time sung stay readable
        if (double const length = sung_length(s, cell, most); length > 0)
            placer.block({s.body_left(), axis.y(cell.pitch) - 3, length, 6});
    for (auto const* c : order) {
        draw_tick(canvas, s, axis, *c);
        name_crossing(canvas, s, axis, *c, placer);
    }
}

} // namespace

void draw_rim_of(Canvas& canvas, Box const& box, plan::Advice advice) {
    if (advice == plan::Advice::modify) canvas.fill(box, ink::modify);
    if (advice == plan::Advice::migrate) {
        canvas.fill(box, ink::migrate_wash);
        hatch(canvas, box, 2.2, {.width = 0.8, .color = ink::migrate});
    }
    canvas.stroke(Path().rectangle(box), {.width = 0.5, .color = color_of(advice)});
}

void draw_strip(Canvas& canvas, Strip const& strip, PitchAxis const& axis, double most) {
    draw_zones(canvas, strip, axis);
    draw_rim(canvas, strip, axis);
    draw_frame(canvas, strip, axis);
    draw_sung(canvas, strip, axis, most);
    draw_heard(canvas, strip, axis);
    draw_crossings(canvas, strip, axis, most);
}

} // namespace vowelway::chart
