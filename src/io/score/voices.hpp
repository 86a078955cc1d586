// SPDX-License-Identifier: MIT
// The voices of a part. Private to the library.
#pragma once

#include "io/score/part_events.hpp"

#include <map>
#include <string>
#include <vector>

namespace vowelway::io {

/// Whether an event is a note to sing.
inline bool sounds(PartEvent const& event) { return !event.rest && !event.cue && !event.unpitched; }

struct Voice {
    std::string name;
    int staff = 1;            ///< where most of it stands
    int words = 0, notes = 0; ///< words: of the verse
    std::map<int, int> on_staff;
};

/// From the highest staff down.
std::vector<Voice> voices_of(Part const& part, std::string const& verse);

/// Notes of a voice that follow each other without a gap.
struct Run {
    double begin = 0, end = 0;
    std::vector<PartEvent const*> events;
};

std::vector<Run> runs_of(PartMeasure const& measure, std::string const& voice);

} // namespace vowelway::io
