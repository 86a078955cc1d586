// SPDX-License-Identifier: MIT
#include "chart/page/exercise_staff.hpp"

#include "chart/canvas/style.hpp"
#include "chart/engraving/engrave.hpp"
#include "chart/page/words_under.hpp"

#include <vector>

namespace vowelway::chart {
namespace {

/// That of the song, so that the exercise is read as the song is.
Clef clef_of(plan::Plan const& plan) {
    auto const staff = staff_to_draw(plan.passage);
    for (auto const& m : staff.measures)
        if (m.clef && (m.clef->sign == 'G' || m.clef->sign == 'F' || m.clef->sign == 'C')) return *m.clef;
    return {};
}

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

/// What is sung on a note of the exercise; empty where it goes on.
std::string vowel_on(plan::Exercise const& exercise, std::size_t i) {
    return i < exercise.sung.size() ? exercise.sung[i] : std::string();
}

plan::Plan line_of(plan::Exercise const& exercise, Clef const& clef) {
    plan::Plan line;
    StaffMeasure bar;
    bar.implicit = true;
    bar.clef = clef;
    bar.key = KeySignature{};
    bar.right = Barline::final;
    bool const slide = exercise.kind == plan::Exercise::Kind::slide;
    for (std::size_t i = 0; i < exercise.notes.size(); ++i) {
        auto e = event_of(exercise.notes[i], clef, slide || i + 1 == exercise.notes.size());
        e.onset = static_cast<double>(i);
        e.sung = i;
        bar.events.push_back(std::move(e));
        SungNote note{.pitch = line.passage.tuning.pitch(exercise.notes[i]), .spelled = exercise.notes[i]};
        note.melisma = vowel_on(exercise, i).empty();
        if (!note.melisma) note.syllables.push_back({vowel_on(exercise, i), Syllable::Part::single});
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

Drawing exercise_staff(plan::Exercise const& exercise, plan::Plan const& plan, double width,
                       TextMeasurer const& measurer) {
    auto const line = line_of(exercise, clef_of(plan));
    auto const& staff = line.passage.staff;
    auto const systems = assign_systems(measure_bars(line, staff, measurer, Under::words), width);
    auto const& system = systems.front();
    Drawing staff_drawing(measurer), out(measurer);
    Engraver(staff).draw(system, staff_drawing);
    if (exercise.kind == plan::Exercise::Kind::slide) draw_slides(system, line, staff_drawing);
    WordsUnder(Under::words).draw(system, staff_drawing);
    staff_drawing.replay(out, {0, -staff_drawing.top(-1e6, 1e6, 0)});
    return out;
}

} // namespace vowelway::chart
