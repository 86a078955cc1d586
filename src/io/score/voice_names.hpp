// SPDX-License-Identifier: MIT
// Which voices the name of a part speaks of. Private to the library.
#pragma once

#include "vowelway/core/singer.hpp"

#include <string_view>
#include <vector>

namespace vowelway::io {

/// The voices a name says, in its order, each once: "Soprano & Alto", "T. B.", "SATB", "Dessus"; empty for
/// none. Common practice, no source.
std::vector<VoiceType> voices_named(std::string_view name);

/// "Men", "Herren", "Hommes": men, without saying which.
bool names_men(std::string_view name);

/// Who sings a line that lies there in the mean (MIDI key numbers): the borders are halfway between the
/// middles of choir ranges (C4..G5, G3..D5, C3..G4, E2..C4; common practice, no source). Men's lines may be
/// written an octave higher than they sound.
VoiceType voice_at(double key, bool men);

} // namespace vowelway::io
