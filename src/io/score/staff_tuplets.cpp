// SPDX-License-Identifier: MIT
#include "io/score/staff_events.hpp"

#include <cmath>

namespace vowelway::io {

namespace {

void group(std::vector<StaffEvent>& events, std::size_t first, std::size_t last) {
    double filled = 0, unit = 0;
    bool open = false;
    for (auto i = first; i < last; ++i) {
        auto& tuplet = *events[i].tuplet;
        if (!open) {
            tuplet.begins = open = true;
            filled = 0;
            unit = std::ldexp(32.0, -static_cast<int>(events[i].value));
        }
        filled += events[i].length;
        double const whole = unit * tuplet.normal;
        bool const full = std::abs(std::remainder(filled, whole)) < time_tolerance;
        if (full || i + 1 == last) {
            tuplet.ends = true;
            open = false;
        }
    }
}

} // namespace

void close_tuplets(StaffMeasure& bar) {
    auto& events = bar.events;
    for (std::size_t i = 0; i < events.size();) {
        if (!events[i].tuplet) {
            ++i;
            continue;
        }
        auto last = i;
        bool marked = false;
        while (last < events.size() && events[last].tuplet &&
               events[last].tuplet->actual == events[i].tuplet->actual &&
               events[last].tuplet->normal == events[i].tuplet->normal) {
            marked |= events[last].tuplet->begins || events[last].tuplet->ends;
            ++last;
        }
        if (!marked) group(events, i, last);
        i = last;
    }
}

} // namespace vowelway::io
