// SPDX-License-Identifier: MIT
#include "chart/page/exercise_staff.hpp"

#include "chart/engraving/engrave.hpp"
#include "chart/page/notes_on_staff.hpp"

namespace vowelway::chart {
namespace {

/// That of the song, so that the exercise is read as the song is.
Clef clef_of(plan::Plan const& plan) {
    auto const staff = staff_to_draw(plan.passage);
    for (auto const& m : staff.measures)
        if (m.clef && (m.clef->sign == 'G' || m.clef->sign == 'F' || m.clef->sign == 'C')) return *m.clef;
    return {};
}

} // namespace

Drawing exercise_staff(plan::Exercise const& exercise, plan::Plan const& plan, double width,
                       TextMeasurer const& measurer) {
    using Look = NotesOnStaff::Look;
    bool const slide = exercise.kind == plan::Exercise::Kind::slide;
    return notes_on_staff({exercise.notes, exercise.sung, clef_of(plan), slide ? Look::slide : Look::steps},
                          width, measurer);
}

} // namespace vowelway::chart
