// SPDX-License-Identifier: MIT
// Scales of the ear: critical-band rate (Bark), equivalent rectangular bandwidth, A-weighting.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/units.hpp"

#include <cmath>

namespace vowelway::acoustics {

/// Place on the scale of equivalent rectangular bandwidths.
using Cams = Scale<struct CamsKind>;

/// Critical-band rate of a frequency, with the corrections at both ends of the scale.
/// Source  Traunmüller 1990, J. Acoust. Soc. Am. 88, 97: z = 26.81/(1 + 1960/f) - 0.53; below 2 Bark
///         +0.15(2 - z), above 20.1 Bark +0.22(z - 20.1).  Range  f > 0; within 0.05 Bark for 0.2..6.7 kHz.
inline Bark bark(Frequency f) {
    double const z = 26.81 * f.value() / (1960 + f.value()) - 0.53;
    if (z < 2) return {z + 0.15 * (2 - z)};
    if (z > 20.1) return {z + 0.22 * (z - 20.1)};
    return {z};
}

/// The frequency at a place: the inverse of bark().  Range  -0.15 .. 27 Bark.
inline Frequency frequency(Bark place) {
    double z = place.value;
    if (z < 2) z = (z - 0.3) / 0.85;
    if (z > 20.1) z = (z + 4.422) / 1.22;
    return hertz(1960 * (z + 0.53) / (26.28 - z));
}

/// Width of the critical band around a place.  Source  Traunmüller 1990.
inline Frequency critical_bandwidth(Bark z) {
    return hertz(52548 / (z.value * z.value - 52.56 * z.value + 690.39));
}

/// Equivalent rectangular bandwidth, and the number of them below a frequency.
/// Source  Glasberg & Moore 1990, Hear. Res. 47, 103: 24.7(4.37 F + 1) Hz, 21.4 log10(4.37 F + 1), F in kHz.
inline Frequency equivalent_rectangular_bandwidth(Frequency f) {
    return hertz(24.7 * (4.37e-3 * f.value() + 1));
}
inline Cams cams(Frequency f) { return {21.4 * std::log10(4.37e-3 * f.value() + 1)}; }

/// A-weighting of a sound-level meter.  Source  IEC 61672-1, the analytic curve.  Range  f > 0.
Decibels a_weighting(Frequency f);

} // namespace vowelway::acoustics
