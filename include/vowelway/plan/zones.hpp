// SPDX-License-Identifier: MIT
// Zones: where a sung pitch lies for a vowel, and how surely.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/plan.hpp"

namespace vowelway::plan {

/// Reads the zone from fR1 ~ Normal(centre, sd):
/// p_turned = P(fR1 < 2fo), p_above = P(fR1 < fo); turning and meeting are the pitches whose harmonic lies
/// within one standard deviation of fR1.
ZoneReading read_zone(Pitch fo, Resonance const& r1);

} // namespace vowelway::plan
