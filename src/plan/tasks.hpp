// SPDX-License-Identifier: MIT
// The notes of a passage as the optimiser sees them. Private to the layer.
#pragma once

#include "plan/strategy.hpp"
#include "vowelway/core/passage.hpp"

#include <vector>

namespace vowelway::plan {

/// How strongly a note is bound to the one before it: the cost of changing the shape between them against
/// that of a step between notes half a second apart, in one breath and on one syllable.
///   time      the root of half a second over the time between the onsets, 1/2 .. 2: fast notes move less
///   breath    a rest of a quarter of a second or more: 1/5
///   syllable  a new one: 0.6, for the consonants move the tract anyway; with another vowel: 0.2, for so does
///   the vowel repeated  the same syllable, vowel and pitch again: 4, it stays as it was leap      of more
///   than a fourth: 0.6, for the ear does not compare colours across it as it does in a step
/// Common practice, no source; the sizes are our judgement.
double line_between(SungNote const& before, SungNote const& note);

/// The share of the attention to a modified shape that keeping it on this note takes: none within a phrase on
/// one vowel, a quarter on another vowel, all after a rest of a quarter of a second. Our judgement.
double attention_between(SungNote const& before, SungNote const& note);

} // namespace vowelway::plan
