// SPDX-License-Identifier: MIT
// How wide a resonance of the vocal tract is, when nobody has measured it.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/pitch.hpp"
#include "vowelway/core/units.hpp"

namespace vowelway::acoustics {

/// Published models of the half-power bandwidth as a function of the resonance's frequency.
/// For 500 / 1500 / 2500 Hz they give: hawks_miller 38 / 47 / 91 (at fo 132 Hz), swept_tone 52 / 69 / 102,
/// closed_glottis 40 / 81 / 170 Hz.
enum class BandwidthModel {
    /// Hawks & Miller 1995, J. Acoust. Soc. Am. 97, 1343: polynomials through measured vowels, times
    /// 1 + 0.25(fo - 132)/88. The factor holds for speech and is kept at fo = 88..264 Hz.
    hawks_miller,
    /// Tappert, Mártony & Fant 1963: 50(1 + F²/6e6); below 500 Hz the correction of Khodai-Joopari &
    /// Clermont 2002, 52.08(1 + (F - 500)²/1e5), kept at its value for 250 Hz below that.
    /// Our default: nearest to the 50..90 Hz of fR1 in voiced sound (Stevens 1998).
    swept_tone,
    /// Fant 1972 (from memory): 15(500/F)² + 20(F/500)^½ + 5(F/500)², glottis closed.
    closed_glottis,
};

/// Half-power bandwidth of a resonance at `centre`; `fo` only matters to hawks_miller.
/// Range  100..5000 Hz; outside it the value at the end of the range.
Frequency bandwidth(BandwidthModel model, Frequency centre, Pitch fo = Pitch(hertz(132)));

/// Share of the radiation in the bandwidth: F² A K/(l c), K = 1.5 (Stevens 1998, from notes), c = 354 m/s,
/// for a mouth of area `lips` and a tract of length `tract`.
Frequency radiation_bandwidth(Frequency centre, Area lips, Length tract);

} // namespace vowelway::acoustics
