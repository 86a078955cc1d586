// SPDX-License-Identifier: MIT
#include "chart/charts/keys_compared/rows.hpp"

#include "chart/canvas/style.hpp"
#include "chart/page/legend.hpp"
#include "chart/page/marks.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway::chart {
namespace {

constexpr double names = 132, bars = 64; // left of the notes, and right of them
constexpr double row = 21, cell = 13, line_height = 46;

/// A note's place in a row: nothing for hold, half for drifting, all of it for a change.
void draw_advice(Canvas& canvas, Box const& box, plan::DemandNote const& note) {
    switch (note.advice) {
    case plan::Advice::hold:
        break;
    case plan::Advice::migrate: {
        Box const half{box.left, box.top + box.height / 2, box.width, box.height / 2};
        canvas.fill(half, ink::migrate_wash);
        hatch(canvas, half, 2.2, {.width = 0.45, .color = ink::migrate});
        break;
    }
    case plan::Advice::modify:
        canvas.fill(box, ink::modify);
        break;
    }
}

/// A wedge over a long note on a turn or a meeting.
void draw_wedge(Canvas& canvas, Point tip) {
    canvas.fill(Path().move(tip).line({tip.x - 2.2, tip.y - 4}).line({tip.x + 2.2, tip.y - 4}).close(),
                ink::black);
}

void draw_out_of_range(Canvas& canvas, Box const& box) {
    canvas.line({box.left, box.top}, {box.right(), box.bottom()}, {.width = 0.8, .color = ink::black});
    canvas.line({box.left, box.bottom()}, {box.right(), box.top}, {.width = 0.8, .color = ink::black});
}

bool outside(plan::KeysPlan const& keys, SungNote const& note, int semitones_up) {
    auto const& range = keys.singer.range;
    return range && plan::side_of(*range, keys.passage.tuning, note.pitch + semitones(semitones_up)) != 0;
}

} // namespace

KeyColumns key_columns(plan::KeysPlan const& keys, double width) {
    KeyColumns out{.left = names, .right = width - bars};
    auto const& notes = keys.passage.notes;
    out.begins = in_seconds(notes.front().start);
    out.whole = std::max(1e-6, in_seconds(notes.back().start + notes.back().length) - out.begins);
    return out;
}

double draw_line(Canvas& canvas, plan::KeysPlan const& keys, KeyColumns const& columns, double y) {
    auto const& passage = keys.passage;
    auto const ends = compass(passage);
    Pitch const low = ends.first;
    double const span = std::max(1.0, in_semitones(ends.second - low));
    auto const height = [&](Pitch p) { return y + line_height * (1 - in_semitones(p - low) / span); };
    if (keys.dwelling) { // as it lies when the song stands in the key proposed
        auto const by = semitones(keys.recommended().semitones);
        double const top = std::clamp(height(passage.tuning.pitch(keys.dwelling->high) - by), y,
                                      y + line_height),
                     bottom = std::clamp(height(passage.tuning.pitch(keys.dwelling->low) - by), y,
                                         y + line_height);
        if (bottom > top)
            canvas.fill(Box{columns.left, top, columns.right - columns.left, bottom - top}, ink::wash);
    }
    canvas.write({0, y + line_height / 2 + 3}, worded("the line as written"),
                 slanted(type::label, ink::soft));
    Path steps;
    for (auto const& note : passage.notes)
        steps.move({columns.x(note.start), height(note.pitch)})
            .line({columns.x(note.start + note.length), height(note.pitch)});
    canvas.stroke(steps, {.width = 1.4, .color = ink::black});
    double const under = y + line_height + 10;
    double free = columns.left;
    std::string last;
    for (auto const& note : passage.notes) {
        if (note.measure == last || columns.x(note.start) < free) continue;
        last = note.measure;
        auto const ink =
            canvas.write({columns.x(note.start), under}, note.measure, plain(type::small, ink::soft));
        free = ink.right() + 26;
    }
    canvas.write({columns.left - 6, under}, worded("bar"), slanted(type::small, ink::soft), Align::right);
    canvas.write({columns.right + 10, under}, worded("speaks against"), slanted(type::small, ink::soft));
    return under + 6;
}

double draw_key(Canvas& canvas, plan::KeysPlan const& keys, plan::KeyPlan const& key,
                KeyColumns const& columns, double most, double y) {
    bool const proposed = &key == &keys.recommended();
    double const base = y + row - 4;
    auto const style = proposed ? bold(type::label) : plain(type::label);
    canvas.write({0, base}, plan::words_of_key(key.semitones), style);
    canvas.write({columns.left - 6, base}, key.low.str() + "-" + key.high.str(),
                 plain(type::small, ink::soft), Align::right);
    auto const box_of = [&](SungNote const& note) {
        double const left = columns.x(note.start);
        return Box{left, base - cell, std::max(0.4, columns.x(note.start + note.length) - left), cell};
    };
    for (auto const& each : key.demand.each) draw_advice(canvas, box_of(keys.passage.notes[each.note]), each);
    for (auto const& note : keys.passage.notes)
        if (outside(keys, note, key.semitones)) draw_out_of_range(canvas, box_of(note));
    for (auto const at : key.long_on_turn) {
        auto const box = box_of(keys.passage.notes[at]);
        draw_wedge(canvas, {box.left + box.width / 2, box.top + 1});
    }
    canvas.line({columns.left, base}, {columns.right, base}, {.width = 0.5, .color = ink::rule});
    double const length = (bars - 14) * key.terms.total() / std::max(1e-9, most);
    Box const bar{columns.right + 10, base - 7, std::max(1.0, length), 6};
    canvas.fill(bar, proposed ? ink::black : ink::rule);
    if (proposed)
        canvas.stroke(Path().rectangle({-3, base - row + 5, columns.right + bars - 1, row}),
                      {.width = 0.9, .color = ink::black});
    return y + row;
}

double draw_key_legend(Canvas& canvas, plan::KeysPlan const& keys, double y, double width) {
    auto const any = [&](auto const& holds) { return ranges::any_of(keys.keys, holds); };
    auto const advised = [&](plan::Advice advice) {
        return any([&](plan::KeyPlan const& k) {
            return ranges::any_of(k.demand.each, [&](auto const& note) { return note.advice == advice; });
        });
    };
    Legend legend(canvas, y + 10, width, 12);
    auto const sample = [&](std::string_view words, plan::Advice advice) {
        if (!advised(advice)) return;
        legend.entry(16, words, [&](double x, double base) {
            draw_advice(canvas, {x, base - 9, 16, 10},
                        {.note = 0, .zone = {}, .advice = advice, .certainty = 1, .cost = 0});
            canvas.line({x, base + 1}, {x + 16, base + 1}, {.width = 0.5, .color = ink::rule});
        });
    };
    sample(worded("nothing needed"), plan::Advice::hold);
    sample(worded("the vowel drifts: let it"), plan::Advice::migrate);
    sample(worded("change the shape"), plan::Advice::modify);
    if (any([](plan::KeyPlan const& k) { return !k.long_on_turn.empty(); }))
        legend.entry(8, worded("a long note where the vowel turns over, or fo meets fR1"),
                     [&](double x, double base) {
                         draw_wedge(canvas, {x + 4, base});
                     });
    auto const beyond = [&](plan::KeyPlan const& k) {
        return ranges::any_of(keys.passage.notes,
                              [&](auto const& n) { return outside(keys, n, k.semitones); });
    };
    if (any(beyond))
        legend.entry(10, worded("out of this singer's range"), [&](double x, double base) {
            draw_out_of_range(canvas, {x, base - 9, 9, 9});
        });
    legend.entry(14, worded("in a frame: the key proposed"), [&](double x, double base) {
        canvas.stroke(Path().rectangle({x, base - 8, 13, 9}), {.width = 0.9, .color = ink::black});
    });
    if (keys.dwelling)
        legend.entry(14, worded("where this voice may dwell, in that key"), [&](double x, double base) {
            canvas.fill(Box{x, base - 8, 13, 9}, ink::wash);
        });
    return legend.y() + 6;
}

} // namespace vowelway::chart
