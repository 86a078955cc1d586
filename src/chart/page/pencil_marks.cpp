// SPDX-License-Identifier: MIT
#include "chart/page/pencil_marks.hpp"

#include "chart/page/legend.hpp"
#include "chart/page/marks.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <optional>
#include <string>

namespace vowelway::chart {
namespace {

constexpr double vowel_size = 14, words_size = 9.5, pencil_sign = 9;
constexpr double clear_of_marks = 3; // round a mark

TextStyle const vowel_style = bold(vowel_size, ink::modify);
TextStyle const words_style = slanted(words_size, ink::modify);

/// A mark as it will be set.
struct Pencilled {
    plan::PencilMark const* mark;
    std::string vowel, words;
    double vowel_width = 0, width = 0;
};

Pencilled pencilled(plan::PencilMark const& mark, TextMeasurer const& m) {
    Pencilled p{&mark, mark.vowel ? mark.vowel->ipa() : std::string(), mark.words};
    if (!mark.sure) (p.words.empty() ? p.vowel : p.words) += " ?";
    p.vowel_width = m.measure(p.vowel, vowel_style).advance;
    p.width = p.vowel_width + m.measure(p.words, words_style).advance;
    if (!p.vowel.empty() && !p.words.empty()) p.width += 4;
    if (mark.turns) p.width = 1.2 * pencil_sign;
    return p;
}

/// The line along which a mark goes on; it ends in a hook, as a pencil does.
void draw_until(Point from, double to, Drawing& drawing) {
    if (to - from.x < 10) return;
    drawing.stroke(Path().move(from).line({to, from.y}).line({to, from.y + 3}),
                   {.width = 0.6, .color = ink::modify});
}

/// Draws one mark over its note; `until` is where the last note it holds for stands in this system.
void draw_mark(Pencilled const& p, double note, std::optional<double> until, double limit, Drawing& drawing) {
    double const left = std::max(0.0, std::min(note - head_half, limit - p.width));
    double const right = std::max(left + p.width, until.value_or(left));
    double const baseline = drawing.top(left - clear_of_marks, right + clear_of_marks, -0.5 * space) - 4;
    if (p.mark->turns) {
        turn_sign(drawing, {left, baseline}, pencil_sign);
        return;
    }
    drawing.write({left, baseline}, p.vowel, vowel_style);
    double const words = left + (p.vowel.empty() ? 0 : p.vowel_width + 4);
    drawing.write({words, baseline}, p.words, words_style);
    if (until) draw_until({left + p.width + 3, baseline - 3}, *until + head_half, drawing);
}

} // namespace

void turn_sign(Canvas& canvas, Point foot, double size) {
    double const w = 0.95 * size, h = 0.95 * size, x = foot.x, y = foot.y;
    canvas.stroke(Path()
                      .move({x + 0.06 * size, y})
                      .curve({x + 0.06 * size, y - 1.25 * h}, {x + w, y - 1.25 * h}, {x + w, y - 0.3 * h}),
                  {.width = 0.15 * size, .color = ink::migrate, .round = true});
    canvas.fill(Path()
                    .move({x + w - 0.26 * size, y - 0.42 * h})
                    .line({x + w + 0.26 * size, y - 0.42 * h})
                    .line({x + w, y + 0.06 * size})
                    .close(),
                ink::migrate);
}

void draw_pencil_marks(System const& system, plan::Pencil const& pencil, Drawing& drawing) {
    for (auto const& mark : pencil.marks) {
        auto const begins = ranges::find_if(
            system.atoms, [&](Atom const& a) { return a.note == mark.note && a.begins_note; });
        if (begins == system.atoms.end()) continue;
        std::optional<double> until;
        for (auto const& a : system.atoms)
            if (a.note && *a.note > mark.note && *a.note <= mark.last) until = a.x;
        draw_mark(pencilled(mark, drawing.measurer()), begins->x, until, system.width, drawing);
    }
}

double draw_pencil_legend(Canvas& canvas, plan::Pencil const& pencil, double y, double width) {
    if (pencil.marks.empty()) return y;
    Legend legend(canvas, y + 10, width, 14, 14);
    auto const any = [&](auto test) { return ranges::any_of(pencil.marks, test); };
    if (any([](auto const& m) { return m.vowel.has_value(); }))
        legend.entry(9, worded("sing toward this vowel, think the written one"), [&](double x, double at) {
            canvas.write({x, at}, "ɛ", bold(12, ink::modify));
        });
    if (any([](auto const& m) { return m.turns; }))
        legend.entry(12, worded("the vowel turns over: let it, do not open for it"),
                     [&](double x, double at) {
                         turn_sign(canvas, {x, at}, 8);
                     });
    if (any([](auto const& m) { return !m.sure; }))
        legend.entry(6, worded("try it: the measurement leaves it open"), [&](double x, double at) {
            canvas.write({x, at}, "?", bold(type::label, ink::modify));
        });
    y = legend.y() + 4;
    for (auto const& caution : pencil.cautions)
        for (auto const& line : wrapped(canvas.measurer(), caution, bold(type::label), width))
            canvas.write({0, y += 11}, line, bold(type::label));
    return y + 4;
}

} // namespace vowelway::chart
