// SPDX-License-Identifier: MIT
#include "chart/charts/plans_compared/differences.hpp"

#include "chart/page/marks.hpp"
#include "chart/page/note_cells.hpp"
#include "chart/page/text.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <functional>
#include <string>
#include <vector>

namespace vowelway::chart {
namespace {

constexpr std::size_t most_listed = 8;

/// Where the sound is, and what is done: "turning  ◆ ɪ open the jaw".
void doing(Canvas& canvas, plan::Decision const& d, std::array<Cents, 2> const& way, double x, double y,
           double room) {
    auto const& m = canvas.measurer();
    double const zone = 44;
    canvas.write({x, y}, fitted(m, reworded(to_string(d.zone.zone)), plain(type::label), zone - 3),
                 plain(type::label));
    advice_sign(canvas, {x + zone + 4, y - 3}, 7, d.advice);
    double from = x + zone + 11;
    if (d.advice == plan::Advice::modify)
        from = canvas.write({from, y}, d.target.shade.quality().ipa(), bold(type::body, color_of(d.advice)))
                   .right() +
               5;
    auto const fits = [&](std::string const& words) {
        return m.measure(words, plain(type::label)).advance <= x + room - from;
    };
    auto words = d.advice == plan::Advice::hold ? worded("hold") : brief_of(d);
    if (d.advice == plan::Advice::modify) { // how far, which may be all that differs
        auto const semitones = fmt::format("{:+.0f}", in_semitones(way[0]));
        for (auto const& numbered : {words + ", fR1 " + semitones, words + ", " + semitones})
            if (fits(numbered)) {
                words = numbered;
                break;
            }
    }
    canvas.write({from, y}, fitted(m, words, plain(type::label), x + room - from),
                 plain(type::label, color_of(d.advice)));
}

/// One row a difference: the note, then a column for each singer, then how certain it is.
struct DifferenceColumns {
    NoteColumns note;
    double first, room; // of the singers' columns
    double right;
    double of(std::size_t singer) const { return first + room * static_cast<double>(singer); }
};

DifferenceColumns columns_of(double width) {
    double const what = 56, first = what + std::min(92.0, width * 0.19);
    return {{0, 17, what, first}, first, (width - 34 - first) / 2, width};
}

void draw_heads(Canvas& canvas, DifferenceColumns const& columns, plan::PlansCompared const& c, double y) {
    draw_note_heads(canvas, columns.note, y);
    for (std::size_t s = 0; s < 2; ++s)
        canvas.write({columns.of(s), y},
                     fitted(canvas.measurer(), c.plans[s].singer.name, bold(type::small), columns.room - 6),
                     bold(type::small));
    canvas.write({columns.right, y}, worded("certain"), plain(type::small, ink::soft), Align::right);
}

void draw_difference(Canvas& canvas, DifferenceColumns const& columns, plan::PlansCompared const& c,
                     std::size_t note, int number, double base) {
    draw_note_cells(canvas, c.plans[0], note, number, columns.note, base);
    auto const at = ranges::find(c.notes, note, &plan::ComparedNote::note);
    for (std::size_t s = 0; s < 2; ++s)
        doing(canvas, *c.plans[s].notes[note].decision, at->way[s], columns.of(s), base, columns.room - 6);
    canvas.write(
        {columns.right, base},
        fmt::format("{:.0f} %{}", 100 * at->certainty, at->certainty >= plan::sure_parting ? "" : " ?"),
        plain(type::label), Align::right);
}

std::string percent(Duration part, Duration whole) {
    return fmt::format("{:.0f} %", 100 * in_seconds(part) / std::max(1e-9, in_seconds(whole)));
}

/// How long one singer does what, as parts of a bar: blank, hatched, dark.
void draw_bar(Canvas& canvas, plan::AdviceTimes const& t, double x, double y, double length) {
    for (auto const advice : {plan::Advice::hold, plan::Advice::migrate, plan::Advice::modify}) {
        double const w =
            length * in_seconds(t.of[static_cast<std::size_t>(advice)]) / std::max(1e-9, in_seconds(t.all()));
        Box const box{x, y - 7.5, w, 8};
        if (w > 0.3 && advice == plan::Advice::migrate)
            hatch(canvas, box, 2.0, {.width = 0.6, .color = ink::migrate});
        if (w > 0.3 && advice == plan::Advice::modify) canvas.fill(box, ink::modify);
        if (w > 0.3) canvas.stroke(Path().rectangle(box), {.width = 0.5, .color = color_of(advice)});
        x += w;
    }
}

} // namespace

std::map<std::size_t, int> differences_to_list(plan::PlansCompared const& c) {
    std::vector<plan::ComparedNote const*> order;
    for (auto const& n : c.notes)
        if (n.weight > 0 && n.certainty >= plan::listed_parting) order.push_back(&n);
    ranges::stable_sort(order, std::greater{}, &plan::ComparedNote::weight);
    order.resize(std::min(order.size(), most_listed));
    ranges::sort(order, {}, &plan::ComparedNote::note);
    std::map<std::size_t, int> numbers;
    for (auto const* n : order) numbers.emplace(n->note, static_cast<int>(numbers.size()) + 1);
    return numbers;
}

double draw_differences(Canvas& canvas, plan::PlansCompared const& c,
                        std::map<std::size_t, int> const& numbers, double y, double width) {
    y = draw_heading(canvas, 0, y, width, worded("Where the plans differ"));
    if (numbers.empty()) {
        canvas.write({0, y + 12}, worded("Nowhere with certainty: both can sing it the same way."),
                     plain(type::body));
        return y + 20;
    }
    auto const columns = columns_of(width);
    y += 9;
    draw_heads(canvas, columns, c, y);
    y += 3;
    for (auto const& [note, number] : numbers) {
        double const base = y + 11;
        draw_difference(canvas, columns, c, note, number, base);
        y = base + 3.4;
        canvas.line({0, y}, {width, y}, {.width = 0.35, .color = ink::rule});
    }
    return y + 2;
}

double draw_shares(Canvas& canvas, plan::PlansCompared const& c, double y, double width) {
    auto const& m = canvas.measurer();
    double names = 0;
    for (auto const& plan : c.plans)
        names = std::max(names, m.measure(plan.singer.name, plain(type::body)).advance);
    double const left = std::min(names + 10, width * 0.3), bar = (width - left) * 0.52;
    for (std::size_t s = 0; s < 2; ++s) {
        auto const& t = c.times[s];
        y += 13.5;
        canvas.write({0, y}, fitted(m, c.plans[s].singer.name, plain(type::body), left - 6),
                     plain(type::body));
        draw_bar(canvas, t, left, y, bar);
        double const x = left + bar + 10;
        auto const text = worded("{0} hold, {1} migrate, {2} modify", percent(t.of[0], t.all()),
                                 percent(t.of[1], t.all()), percent(t.of[2], t.all()));
        canvas.write({x, y}, fitted(m, text, plain(type::label), width - x), plain(type::label));
    }
    auto const all = c.times[0].all();
    canvas.write({0, y += 14},
                 fitted(m,
                        worded("The plans differ for {0} of the time sung, certainly (at least {1} %) for "
                               "{2}; fR1 in semitones from the singer's own vowel.",
                               percent(c.parting, all), fmt::format("{:.0f}", 100 * plan::sure_parting),
                               percent(c.surely_parting, all)),
                        plain(type::label), width),
                 plain(type::label));
    return y + 6;
}

} // namespace vowelway::chart
