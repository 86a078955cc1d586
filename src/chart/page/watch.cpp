// SPDX-License-Identifier: MIT
#include "chart/page/watch.hpp"

#include "chart/page/marks.hpp"
#include "chart/page/note_cells.hpp"
#include "chart/page/passive_ranges.hpp"
#include "chart/page/text.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace vowelway::chart {
namespace {

/// Where the columns of the table begin. What to do matters more than what is heard, and that more than what
/// happens: where room is short, these are left out in that order.
struct WatchColumns {
    NoteColumns note;
    std::optional<double> happens, heard;
    double act = 0;
    double right = 0; ///< end of the table
};

std::string action_of(plan::Watched const& w, plan::Decision const& d) {
    return is_sure(d) ? w.words : w.words + " ?";
}

/// The widest of what there is to do.
double widest_action(TextMeasurer const& m, plan::Plan const& plan, std::vector<plan::Watched> const& watch) {
    double longest = 0;
    for (auto const& w : watch) {
        auto const& d = *plan.notes[w.note].decision;
        double const shade = m.measure(d.target.shade.quality().ipa(), bold(type::body)).advance + 5;
        longest = std::max(longest, 12 + shade + m.measure(action_of(w, d), plain(type::label)).advance);
    }
    return longest;
}

WatchColumns columns_of(double x, double width, double widest, bool numbers) {
    double const happens = x + 136, heard = x + 207, full = x + 233, right = x + width;
    WatchColumns c{.note = {x, x + 17, x + 56, happens}, .happens = {}, .heard = {}, .right = right};
    bool const narrow = width < 330 || full + widest > right;
    bool const narrower = !numbers || heard + 1 + widest > right;
    if (!narrower) c.happens = happens;
    if (!narrow && numbers) c.heard = heard;
    c.act = narrower ? happens + 1 : narrow ? heard + 1 : full;
    return c;
}

void draw_heads(Canvas& canvas, WatchColumns const& c, double y) {
    auto const small = plain(type::small, ink::soft);
    draw_note_heads(canvas, c.note, y);
    if (c.happens) canvas.write({*c.happens, y}, worded("what happens"), small);
    if (c.heard) canvas.write({*c.heard, y}, worded("heard"), small);
    canvas.write({c.act, y}, worded("what to do"), small);
}

/// Returns its last baseline: what does not fit goes on below.
double draw_action(Canvas& canvas, WatchColumns const& c, plan::Watched const& w, plan::Decision const& d,
                   double base) {
    advice_sign(canvas, {c.act + 4, base - 3}, 7, d.advice);
    double const from =
        canvas.write({c.act + 11, base}, d.target.shade.quality().ipa(), bold(type::body, color_of(d.advice)))
            .right() +
        5;
    auto const style = plain(type::label, color_of(d.advice));
    return paragraph(canvas, from, base - 10, c.right - from, action_of(w, d), style, 10);
}

double draw_row(Canvas& canvas, WatchColumns const& c, plan::Plan const& plan, plan::Watched const& w,
                int number, double base) {
    auto const& d = *plan.notes[w.note].decision;
    auto const& vowel = plan.vowels[*plan.notes[w.note].vowel].resonances.vowel;
    draw_note_cells(canvas, plan, w.note, number, c.note, base);
    constexpr double happens_width = 71;
    if (c.happens)
        canvas.write({*c.happens, base},
                     fitted(canvas.measurer(), happening(d.zone.zone), plain(type::label), happens_width - 3),
                     plain(type::label));
    if (c.heard && !(d.heard.vowel.quality() == vowel.quality()))
        canvas.write({*c.heard + 8, base}, d.heard.vowel.quality().ipa(), plain(type::body, ink::migrate),
                     Align::centre);
    return draw_action(canvas, c, w, d, base);
}

} // namespace

double draw_watch(Canvas& canvas, plan::Plan const& plan, plan::Pencil const& pencil, double y, double width,
                  bool numbers) {
    y = draw_heading(canvas, 0, y, width, worded("Notes to watch"));
    if (pencil.watch.empty()) {
        auto const changed = [](auto const& mark) { return !mark.turns && !mark.outside; };
        auto told = plan::summary_of(plan, pencil);
        if (ranges::any_of(pencil.marks, changed))
            told = worded("Nothing on a long or exposed note.") + " " + told;
        return paragraph(canvas, 0, y, width, told, plain(type::body), 12) + 6;
    }
    auto watch = pencil.watch;
    ranges::sort(watch, {}, &plan::Watched::note);
    auto const columns = columns_of(0, width, widest_action(canvas.measurer(), plan, watch), numbers);
    y += 9;
    draw_heads(canvas, columns, y);
    y += 3;
    int number = 0;
    for (auto const& w : watch) {
        double base = draw_row(canvas, columns, plan, w, ++number, y + 11);
        if (!w.also.empty()) {
            base += 10;
            canvas.write({columns.note.where, base},
                         fitted(canvas.measurer(),
                                worded("again in {0}", plan::bars_of(plan.passage, w.also)),
                                slanted(type::label), columns.right - columns.note.where),
                         slanted(type::label, ink::soft));
        }
        y = base + 3.4;
        canvas.line({0, y}, {width, y}, {.width = 0.35, .color = ink::rule});
    }
    return y + 2;
}

std::map<std::size_t, int> numbers_of(plan::Pencil const& pencil) {
    auto watch = pencil.watch;
    ranges::sort(watch, {}, &plan::Watched::note);
    std::map<std::size_t, int> numbers;
    int number = 0;
    for (auto const& w : watch) {
        numbers.emplace(w.note, ++number);
        for (auto const again : w.also) numbers.emplace(again, number);
    }
    return numbers;
}

double draw_ranges(Canvas& canvas, plan::Plan const& plan, double x, double y, double width, int columns) {
    constexpr double gap = 16;
    y = draw_heading(canvas, x, y, width, worded("Vowel as it is, up to"));
    std::span<plan::VowelPlan const> const all(plan.vowels);
    if (columns < 2 || all.size() < 2) return draw_passive_ranges(canvas, plan, all, x, y, width);
    double const column = (width - gap) / 2;
    auto const half = (all.size() + 1) / 2;
    double const a = draw_passive_ranges(canvas, plan, all.first(half), x, y, column);
    return std::max(a, draw_passive_ranges(canvas, plan, all.subspan(half), x + column + gap, y, column));
}

} // namespace vowelway::chart
