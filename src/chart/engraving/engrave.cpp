// SPDX-License-Identifier: MIT
#include "chart/engraving/engrave.hpp"

#include "chart/engraving/beams.hpp"
#include "chart/engraving/notes.hpp"
#include "chart/engraving/signs.hpp"
#include "chart/engraving/tuplets.hpp"

namespace vowelway::chart {

void Engraver::draw(System const& system, Canvas& canvas) {
    draw_staff_lines(system, canvas);
    draw_signs(system, *staff_, canvas);
    auto sets = set_events(system, *staff_);
    draw_beams(sets, canvas);
    for (auto const& set : sets) {
        if (set.event->rest())
            draw_rest(set, canvas);
        else
            draw_note(set, canvas);
        draw_articulations(set, canvas);
    }
    ties_.draw(sets, system, canvas);
    slurs_.draw(sets, system, canvas);
    draw_tuplets(sets, canvas);
}

} // namespace vowelway::chart
