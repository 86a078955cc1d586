// SPDX-License-Identifier: MIT
// A passage in time: the notes of the bars asked for, at the tempo asked for, and its beats.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/passage.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace vowelway::sound {

struct TimingAsked {
    std::optional<std::string> from,
        to; ///< bars by their printed numbers; default: from the first sung to the last
    std::optional<Duration> quarter; ///< of a quarter note at the beginning; changes later stay in proportion
    bool count_in = false;           ///< one bar before the first
};
inline constexpr Duration longest_quarter = seconds(6),
                          shortest_quarter = seconds(0.15); ///< 10 to 400 a minute

struct TimedNote {
    std::size_t note = 0; ///< index in Passage::notes
    Duration start, length;
};
struct Beat {
    Duration at;
    bool first_of_bar = false;
};
/// Times are from the first beat of what is heard, count-in or note.
struct Timing {
    std::vector<TimedNote> notes; ///< never empty
    std::vector<Beat> beats;      ///< empty when the passage has no bars to count
    Duration begins;              ///< of the first bar: the count-in lies before it
    Duration length;
    Duration quarter; ///< at the beginning
};

/// Throws InputError for a bar that is not there (it names those that are), for bars the wrong way round, for
/// bars in which nothing is sung, for a tempo out of range, and for a count-in where no bars can be counted.
Timing timing_of(Passage const& passage, TimingAsked const& asked);

} // namespace vowelway::sound
