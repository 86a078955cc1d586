// SPDX-License-Identifier: MIT
// The resonances of one vowel as something to hear and to find again in one's own soft whisper.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/pitch.hpp"
#include "vowelway/core/resonance.hpp"
#include "vowelway/sound/programme.hpp"

#include <optional>

namespace vowelway::sound {

enum class VowelSound {
    low,     ///< a tone at fR1
    high,    ///< a tone at fR2
    tones,   ///< both at once
    noise,   ///< both as narrow bands of noise
    whisper, ///< the vowel whispered
};

struct VowelSoundsAsked {
    VowelResonances vowel;
    Length tract;                   ///< glottis to lips
    Tuning tuning;                  ///< for the names of pitches
    std::optional<VowelSound> only; ///< nothing: all, one after the other
    Duration each = seconds(2);
    /// Two ways to go wrong, exaggerated, each after the whisper as it should be: the larynx raised, the
    /// tongue forward and the breath noisy at the teeth; the tongue drawn back and the sound dull.
    bool faults = false;
};

/// Tones and bands of equal loudness (A-weighted), then the whisper of the model tract with
/// whispered_resonances().
Programme vowel_sounds(VowelSoundsAsked const& asked);

/// The two faults as gestures from the vowel's whispering shape. The words are those of the list.
Programme fault_sounds(VowelSoundsAsked const& asked);

} // namespace vowelway::sound
