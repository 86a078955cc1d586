// SPDX-License-Identifier: MIT
// The resonances of any vowel for a singer, measured or, failing that, estimated and marked so.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/singer.hpp"

#include <optional>

namespace vowelway::plan {

/// The singer's own entry when there is one (the same quality, then the nearest spelling of it).
/// Otherwise an estimate: the vowel of the `reference` voice, each resonance scaled by the ratio of the
/// singer's own vowels to the reference's (a mean of logarithms, weighted toward vowels near by on the IPA
/// chart), with the scatter of those ratios and 6 % (squares added) as its deviation. A vowel that the
/// reference lacks too takes the nearest vowel on the chart, its deviation widened by a quarter of a chart
/// step's worth per step of distance. Nothing is returned only when neither voice has any vowel.
/// The scaling is the usual uniform one (Fn proportional to 1/tract length, e.g. Fant 1960), made local.
std::optional<VowelResonances> resonances_of(Vowel const& vowel, Singer const& singer,
                                             Singer const* reference);

} // namespace vowelway::plan
