// SPDX-License-Identifier: MIT
// The octave in which a voice sings a line. Private to the library.
#pragma once

#include "io/score/part_events.hpp"
#include "vowelway/core/passage.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <optional>
#include <span>
#include <string>

namespace vowelway::io {

struct Octave {
    double semitones = 0; ///< -24, -12, 12 or 24
    std::string why;      ///< "a man's part in the treble clef"
};

/// Where a line lies an octave from where this voice sings: the octave to take. Of a man's line in a treble
/// clef without its 8 the lower octave is taken where it lies no worse; any other line only where it is
/// clearly out of place as written and in place an octave or two away. Nothing where it stays.
std::optional<Octave> octave_for(std::span<SungNote const> line, bool plain_treble_clef,
                                 ScoreOptions const& options);

/// The clef that the line on a staff begins in is a treble clef that does not say its octave.
bool begins_in_plain_treble(Part const& part, int staff);

/// Clefs show the octave in which the line is sung.
void show_octave(Staff& staff, double semitones);

} // namespace vowelway::io
