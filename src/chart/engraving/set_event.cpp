// SPDX-License-Identifier: MIT
#include "chart/engraving/set_event.hpp"

#include "core/ranges.hpp"

#include <algorithm>

namespace vowelway::chart {
namespace {

void set_stem(SetEvent& set) {
    auto const& e = *set.event;
    int const low = set.steps.front(), high = set.steps.back();
    set.stem.up = e.stem == StemDirection::up ||
                  (e.stem == StemDirection::automatic && (e.grace || middle_step - low > high - middle_step));
    double const length = 3.4 * space * set.scale;
    double const half = head_half * set.scale - stem_width / 2;
    set.stem.x = set.atom->x + (set.stem.up ? half : -half);
    set.stem.from = y_of_step(set.stem.up ? low : high);
    set.stem.to = set.stem.up ? y_of_step(high) - length : y_of_step(low) + length;
    if (!e.grace) // a stem of far ledger lines reaches the middle line
        set.stem.to = set.stem.up ? std::min(set.stem.to, y_of_step(middle_step))
                                  : std::max(set.stem.to, y_of_step(middle_step));
}

} // namespace

std::vector<SetEvent> set_events(System const& system, Staff const& staff) {
    std::vector<SetEvent> sets;
    for (auto const& a : system.atoms) {
        if (a.kind != Atom::Kind::event) continue;
        auto const& e = staff.measures[a.measure].events[a.event];
        SetEvent set{.atom = &a, .event = &e, .scale = e.grace ? grace_scale : 1};
        for (auto const& head : e.heads) set.steps.push_back(staff_step(head.written, a.clef));
        ranges::sort(set.steps);
        set.has_stem = !e.rest() && e.value >= NoteValue::half && e.stem != StemDirection::none;
        if (set.has_stem) set_stem(set);
        sets.push_back(std::move(set));
    }
    return sets;
}

} // namespace vowelway::chart
