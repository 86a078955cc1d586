// SPDX-License-Identifier: MIT
#include "chart/page/note_cells.hpp"

#include "chart/page/marks.hpp"
#include "chart/page/text.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>

namespace vowelway::chart {
namespace {

void circled(Canvas& canvas, int number, Point centre) {
    canvas.stroke(Path().circle(centre, 5.6), {.width = 0.9, .color = ink::modify});
    auto const digits = std::to_string(number);
    canvas.write({centre.x, centre.y + canvas.measurer().measure(digits, bold(type::label)).above / 2},
                 digits, bold(type::label, ink::modify), Align::centre);
}

std::string syllable_at(Passage const& passage, std::size_t note) {
    std::string text = passage.notes[note].text();
    for (std::size_t k = note; text.empty() && k-- > 0;) text = passage.notes[k].text();
    return text;
}

} // namespace

void draw_note_heads(Canvas& canvas, NoteColumns const& columns, double baseline) {
    auto const small = plain(type::small, ink::soft);
    canvas.write({columns.where, baseline}, worded("bar · beat"), small);
    canvas.write({columns.what, baseline}, worded("syllable, pitch"), small);
}

void draw_note_cells(Canvas& canvas, plan::Plan const& plan, std::size_t note, int number,
                     NoteColumns const& columns, double baseline) {
    auto const& m = canvas.measurer();
    auto const& sung = plan.passage.notes[note];
    auto const& vowel = plan.vowels[*plan.notes[note].vowel].resonances.vowel;
    circled(canvas, number, {columns.left + 6, baseline - 3});
    canvas.write({columns.where, baseline},
                 fitted(m, fmt::format("{} · {}", sung.measure, beat_of(sung.beat)), plain(type::body),
                        columns.what - columns.where - 3),
                 plain(type::body));
    auto const name = sung.spelled.str() + " " + slashed(vowel);
    double const name_width = m.measure(name, plain(type::body)).advance;
    auto const syllable = fitted(m, syllable_at(plan.passage, note), bold(type::body),
                                 columns.end - columns.what - name_width - 8);
    auto const box = canvas.write({columns.what, baseline}, syllable, bold(type::body));
    canvas.write({std::max(box.right(), columns.what) + 4, baseline}, name, plain(type::body));
}

} // namespace vowelway::chart
