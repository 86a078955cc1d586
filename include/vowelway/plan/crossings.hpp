// SPDX-License-Identifier: MIT
// Crossings: the pitches at which a harmonic of the voice meets a resonance of the tract.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/plan.hpp"

#include <vector>

namespace vowelway::plan {

/// The pitch fo* = fRk/n at which nfo = fRk. A halving of n raises it by an octave. The deviation is that
/// of the resonance as an interval (the division by n leaves it unchanged).
Crossing crossing(Harmonic n, ResonanceNumber k, Resonance const& resonance);

/// Every crossing of a harmonic with fR1, fR2 and, where known, fR3 and fR4 that falls between `low` and
/// `high`, from low to high. Harmonics are counted as far as the range asks for.
std::vector<Crossing> crossings(VowelResonances const& vowel, Pitch low, Pitch high);

} // namespace vowelway::plan
