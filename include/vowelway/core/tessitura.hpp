// SPDX-License-Identifier: MIT
// Where the lines written for a voice lie most of the time.
#pragma once

#include "vowelway/core/singer.hpp"

#include <optional>

namespace vowelway {

/// The pitches between which a line for this voice spends most of its time: narrower than what the singer can
/// reach. Common practice, no source; of a voice of no type the comfortable range less a major third at each
/// end, and nothing where no range is known.
std::optional<PitchRange> tessitura_of(VoiceType voice, std::optional<PitchRange> const& range = {});

/// Bass, baritone and tenor, as they sing most of the time (a countertenor sings as women do).
bool is_mans_voice(VoiceType voice);

/// Voices whose part in a treble clef sounds an octave lower (common practice, no source).
bool sounds_below_treble_clef(VoiceType voice);

} // namespace vowelway
