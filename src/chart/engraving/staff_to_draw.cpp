// SPDX-License-Identifier: MIT
// A staff for a passage that came without notation.
#include "chart/engraving/score_layout.hpp"

#include <algorithm>

namespace vowelway::chart {
namespace {

constexpr std::size_t notes_a_bar = 4;

/// The clef in which the notes lie best.
Clef clef_for(Passage const& passage) {
    double mean = 0;
    for (auto const& n : passage.notes) mean += n.spelled.key_number();
    mean /= std::max<double>(1, static_cast<double>(passage.notes.size()));
    return mean < 57 ? Clef{'F', 4, 0} : Clef{'G', 2, 0};
}

/// A head without a stem, as long as the note lasts.
StaffEvent head_of(SungNote const& n) {
    StaffEvent e;
    e.length = std::clamp(in_seconds(n.length), 0.1, 8.0);
    e.stem = StemDirection::none;
    e.heads.push_back({.written = n.spelled, .accidental = {}});
    if (n.spelled.alter == 1) e.heads.back().accidental = Accidental::sharp;
    if (n.spelled.alter == -1) e.heads.back().accidental = Accidental::flat;
    return e;
}

} // namespace

Staff staff_to_draw(Passage const& passage) {
    if (!passage.staff.measures.empty()) return passage.staff;
    // Heads spaced by the seconds they last, four to a bar without barlines between.
    Staff staff;
    for (std::size_t i = 0; i < passage.notes.size(); ++i) {
        if (i % notes_a_bar == 0) {
            StaffMeasure m;
            m.implicit = true;
            m.right = Barline::none;
            if (i == 0) m.clef = clef_for(passage);
            staff.measures.push_back(std::move(m));
        }
        auto e = head_of(passage.notes[i]);
        e.sung = i;
        staff.measures.back().events.push_back(std::move(e));
    }
    if (!staff.measures.empty()) staff.measures.back().right = Barline::final;
    return staff;
}

} // namespace vowelway::chart
