// SPDX-License-Identifier: MIT
// A vowel whispered: noise of the breath through a whole model tract.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/acoustics/whispered.hpp"
#include "vowelway/core/resonance.hpp"
#include "vowelway/sound/programme.hpp"

#include <memory>

namespace vowelway::sound {

struct Whispered {
    acoustics::AreaFunction tract; ///< with the resonances that a whisper has
    acoustics::NoisePlace place{}; ///< glottis, unless said otherwise
    Decibels slope{-6};            ///< of the noise, an octave; our judgement of a soft breath
};

/// Even noise through whispered_level(), up to 7 kHz, by a filter of 2048 taps. `level` is A-weighted.
std::unique_ptr<Part> whisper(Whispered const& whispered, Decibels level);

/// Where the resonances of a singing tract lie when it whispers. The gap between the folds shifts all of them
/// up: +255, +115, +125 Hz on the average of vowels and singers (Y. Swerdlin, J. Smith & J. Wolfe, J. Acoust.
/// Soc. Am. 127, 2010, 2590). fR1 of a close vowel (chart height 1 or less) cannot follow the average: +90
/// Hz; the model tracts of such vowels do 50 to 160 with a gap of 40 mm², the area that paper gives (our
/// computation).
VowelResonances whispered_resonances(VowelResonances const& sung);

} // namespace vowelway::sound
