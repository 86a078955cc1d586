// SPDX-License-Identifier: MIT
// One event of the line as it stands on the staff. Private to the library.
#pragma once

#include "io/score/sung_line.hpp"
#include "vowelway/core/notation.hpp"

#include <functional>
#include <optional>

namespace vowelway::io {

/// The written pitch of a note, moved as the staff is.
using WrittenPitch = std::function<SpelledPitch(pugi::xml_node note)>;

/// Nothing for what is not drawn: hidden rests, cue grace notes.
std::optional<StaffEvent> staff_event(LineEvent const& event, std::optional<std::size_t> sung,
                                      WrittenPitch const& written);

/// Where the source marks no tuplet's beginning and end, a group ends when its notes fill the time of
/// `normal` of the first note's value.
void close_tuplets(StaffMeasure& bar);

} // namespace vowelway::io
