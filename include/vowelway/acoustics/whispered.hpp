// SPDX-License-Identifier: MIT
// Noise of the breath in a tract whose glottis is open: what a whisper sounds like.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/acoustics/tract.hpp"
#include "vowelway/core/units.hpp"

#include <cstddef>
#include <optional>

namespace vowelway::acoustics {

/// The gap between whispering folds as the tract feels it: a mere resistance, our choice: it widens fR1 of
/// open vowels to some 100 Hz and leaves the peaks within some 10 Hz of the resonances of the shape. The
/// inertia of the gap is left out: it shifts the resonances, and who asks for a whisper knows the shifted
/// ones.
inline constexpr AcousticOhms whispering_glottis{1500};

/// Where the air becomes noise: just above the glottis, or at the joint behind so many sections, where a
/// narrow place or the teeth break the stream.
using NoisePlace = std::optional<std::size_t>;

/// Level of the sound far in front of the lips, for noise of even power at one place: up to a constant.
/// The chain matrices and the radiation of resonances(), the source a pressure in series. Range  f > 0.
/// Errors  as resonances(); std::out_of_range for a joint that is not there.
Decibels whispered_level(AreaFunction const& tract, Frequency f, AcousticOhms glottis = whispering_glottis,
                         NoisePlace place = {});

} // namespace vowelway::acoustics
