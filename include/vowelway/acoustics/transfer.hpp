// SPDX-License-Identifier: MIT
// What a tract with known resonances does to the sound that passes through it.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/acoustics/bandwidth.hpp"
#include "vowelway/core/resonance.hpp"
#include "vowelway/core/units.hpp"

#include <array>

namespace vowelway::acoustics {

/// One resonance as the transfer function sees it.
struct ResonancePeak {
    Frequency centre, bandwidth;
};

/// The four lowest resonances of one shape of the tract, fR1 < fR2 < fR3 < fR4.
struct ResonanceSet {
    std::array<ResonancePeak, 4> peaks;
    Frequency r1() const { return peaks[0].centre; }
    Frequency r2() const { return peaks[1].centre; }
};

/// Speed of sound in the warm moist air of the tract: 350 m/s, the customary value (Fant 1960).
inline constexpr double speed_of_sound_m_s = 350;

/// First resonance of a uniform tube closed at the glottis: c/4L. The measure of a singer's size.
Frequency quarter_wave(Length tract);
Length tract_of(Frequency quarter_wave);

/// The resonances of a vowel, with what is not known filled in: bandwidths from `model`; fR3 and fR4, in
/// units of `quarter`, 4.83 + 0.51 max(fR2 - 3, 0) and 6.91 + 0.29 max(fR2 - 3, 0), our fit to the 1000
/// complete utterances of Hillenbrand et al. 1995 (residual deviation 0.35 and 0.42 units).
ResonanceSet resonance_set(VowelResonances const& vowel, Frequency quarter,
                           BandwidthModel model = BandwidthModel::swept_tone);
/// The same from fR1 and fR2 alone.
ResonanceSet resonance_set(Frequency r1, Frequency r2, Frequency quarter,
                           BandwidthModel model = BandwidthModel::swept_tone);

/// Gain of one resonance at `f`: 0 dB far below it, Q at its centre, 0 dB again at about √2 times it, then
/// -12 dB an octave.
/// Source  Fant 1960, eq. 1.3-5b: (F² + (B/2)²)/(|f-F ; B/2| |f+F ; B/2|), | ; | the hypotenuse.
Decibels resonance_gain(ResonancePeak const& peak, Frequency f);

/// Gain of the tract at `f`: the four resonances in cascade and the correction for those above them.
Decibels tract_gain(ResonanceSet const& shape, Frequency f, Frequency quarter);

} // namespace vowelway::acoustics
