// SPDX-License-Identifier: MIT
#include "chart/page/notes_on_staff.hpp"

#include "chart/canvas/style.hpp"
#include "chart/engraving/engrave.hpp"
#include "chart/page/words_under.hpp"

namespace vowelway::chart {
namespace {

std::optional<Accidental> accidental_of(SpelledPitch const& p) {
    if (p.alter == 1) return Accidental::sharp;
    if (p.alter == -1) return Accidental::flat;
    if (p.alter == 2) return Accidental::double_sharp;
    if (p.alter == -2) return Accidental::double_flat;
    return std::nullopt;
}

StaffEvent event_of(SpelledPitch const& sounding, Clef const& clef, bool long_note) {
    StaffEvent e;
    e.length = long_note ? 2 : 1;
    e.value = long_note ? NoteValue::half : NoteValue::quarter;
    e.heads.push_back({.written = sounding, .accidental = accidental_of(sounding)});
    e.heads.back().written.octave -= clef.octave_change;
    return e;
}

plan::Plan line_of(NotesOnStaff const& notes) {
    plan::Plan line;
    StaffMeasure bar;
    bar.implicit = true;
    bar.clef = notes.clef;
    bar.key = KeySignature{};
    bar.right = Barline::final;
    for (std::size_t i = 0; i < notes.sounding.size(); ++i) {
        bool const last = i + 1 == notes.sounding.size();
        auto e = event_of(notes.sounding[i], notes.clef, notes.look != NotesOnStaff::Look::steps || last);
        e.onset = static_cast<double>(i);
        e.sung = i;
        bar.events.push_back(std::move(e));
        SungNote note{.pitch = line.passage.tuning.pitch(notes.sounding[i]), .spelled = notes.sounding[i]};
        auto const word = i < notes.words.size() ? notes.words[i] : std::string();
        note.melisma = word.empty();
        if (!note.melisma) note.syllables.push_back({word, Syllable::Part::single});
        line.passage.notes.push_back(std::move(note));
    }
    line.passage.staff.measures.push_back(std::move(bar));
    return line;
}

/// A line from each note to the next.
void draw_slides(System const& system, plan::Plan const& line, Drawing& drawing) {
    auto const& events = line.passage.staff.measures.front().events;
    Atom const* before = nullptr;
    auto const height = [&](Atom const& a) {
        return 4 * space - staff_step(events[a.event].heads.front().written, system.clef) * space / 2;
    };
    for (auto const& a : system.atoms) {
        if (!a.note) continue;
        if (before) {
            double const y0 = height(*before), y1 = height(a);
            double const from = before->x + 1.5 * head_half, to = a.x - a.left - 2;
            if (to > from)
                drawing.line({from, y0 + (y1 < y0 ? -1 : 1)}, {to, y1 + (y1 < y0 ? 1 : -1)}, {.width = 0.9});
        }
        before = &a;
    }
}

} // namespace

Drawing notes_on_staff(NotesOnStaff const& notes, double width, TextMeasurer const& measurer) {
    auto const line = line_of(notes);
    auto const& staff = line.passage.staff;
    auto const systems = assign_systems(measure_bars(line, staff, measurer, Under::words), width);
    auto const& system = systems.front();
    Drawing staff_drawing(measurer), out(measurer);
    Engraver(staff).draw(system, staff_drawing);
    if (notes.look == NotesOnStaff::Look::slide) draw_slides(system, line, staff_drawing);
    WordsUnder(Under::words).draw(system, staff_drawing);
    staff_drawing.replay(out, {0, -staff_drawing.top(-1e6, 1e6, 0)});
    return out;
}

} // namespace vowelway::chart
