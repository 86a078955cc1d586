// SPDX-License-Identifier: MIT
#include "vowelway/plan/load.hpp"

#include <algorithm>
#include <vector>

namespace vowelway::plan {

namespace {

struct Sung {
    Pitch pitch;
    double seconds;
};

// The lowest pitch at or below which `share` of the time lies; notes lowest first.
Pitch quantile(std::vector<Sung> const& notes, double whole, double share) {
    double so_far = 0;
    for (auto const& note : notes)
        if ((so_far += note.seconds) >= share * whole * (1 - 1e-12)) return note.pitch;
    return notes.back().pitch;
}

} // namespace

int side_of(PitchRange const& range, Tuning const& tuning, Pitch pitch) {
    constexpr Cents tuned{1};
    if (pitch < tuning.pitch(range.low) - tuned) return -1;
    return pitch > tuning.pitch(range.high) + tuned ? 1 : 0;
}

std::optional<Load> load_of(Passage const& passage, std::optional<PitchRange> const& comfortable) {
    if (passage.notes.empty()) return std::nullopt;
    std::vector<Sung> notes;
    double voiced = 0, cycles = 0;
    Duration begins = passage.notes.front().start, ends = begins;
    for (auto const& note : passage.notes) {
        notes.push_back({note.pitch, in_seconds(note.length)});
        voiced += notes.back().seconds;
        cycles += in_hertz(note.pitch.frequency()) * notes.back().seconds;
        begins = std::min(begins, note.start);
        ends = std::max(ends, note.start + note.length);
    }
    std::stable_sort(notes.begin(), notes.end(),
                     [](auto const& a, auto const& b) { return a.pitch < b.pitch; });
    auto const at = [&](double share) { return quantile(notes, voiced, share); };
    Load load{{notes.front().pitch, at(0.25), at(0.5), at(0.75), notes.back().pitch},
              ends - begins,
              seconds(voiced),
              cycles,
              {},
              {},
              {},
              {}};
    if (!comfortable) return load;
    auto const bottom = passage.tuning.pitch(comfortable->low), top = passage.tuning.pitch(comfortable->high);
    load.reserve_below = load.tessitura.low - bottom;
    load.reserve_above = top - load.tessitura.high;
    for (auto const& note : notes) {
        auto const side = side_of(*comfortable, passage.tuning, note.pitch);
        if (side < 0) load.below += seconds(note.seconds);
        if (side > 0) load.above += seconds(note.seconds);
    }
    return load;
}

} // namespace vowelway::plan
