// SPDX-License-Identifier: MIT
// A line of notes as a Standard MIDI File, for a keyboard or a notation program.
#pragma once

#include "vowelway/core/pitch.hpp"
#include "vowelway/core/units.hpp"

#include <span>
#include <string>
#include <string_view>

namespace vowelway::io {

struct GuideNote {
    Pitch pitch;
    Duration start, length;
    std::string words; ///< under the note, may be empty
};

/// Format 0, one track, channel 1; 480 ticks to a quarter note of the length given, so that times are kept to
/// about a millisecond (Standard MIDI Files 1.0, MIDI Manufacturers Association 1996). A pitch more than a
/// cent off its key at A4 = 440 Hz is bent there, the range being the usual two semitones. Notes in order of
/// time, one at a time. Errors  std::invalid_argument for a quarter outside 1 ms..16 s; pitches outside the
/// keys 0..127 are left out.
std::string midi_file(std::string_view title, std::span<GuideNote const> notes, Duration quarter);

} // namespace vowelway::io
