// SPDX-License-Identifier: MIT
// How well a resonance is known when nobody says.
#pragma once

#include "vowelway/core/resonance.hpp"

namespace vowelway::io {

/// The standard deviation taken when a profile gives none; it depends on how the value became known.
///   whisper    fR1..fR4: 90, 110, 130, 125 Hz: the spread between singers of what whispering shifts
///              (90, 105, 125, 120 Hz; Swerdlin, Smith & Wolfe 2010, J. Acoust. Soc. Am. 127, 2590) and the
///              error of a repeated measurement (12, 25, 29 Hz; Hillenbrand et al. 1995), as variances
///   creak      50, 80, 125, 125 Hz: the same paper gives 50 for fR1 and 120 for fR3; fR2 is our choice
///   between sung       30, 50, 80, 100 Hz: linear prediction errs by 25 to 30 Hz on synthetic vowels at fo =
///   200 Hz (a
///              published comparison of 2020, known to us from notes only); the upper ones our choice
///   published  9, 7, 6, 6 % of the value: between the men of Peterson & Barney (1952) and Hillenbrand et al.
///   (1995) estimated  12, 10, 8, 8 % (our choice) typed      a semitone (our choice: what a singer names by
///   ear)
/// Range: k from 1 to 4, centre > 0. Leaves out that whispered close vowels fare worse.
Frequency default_deviation(Method method, ResonanceNumber k, Frequency centre);

} // namespace vowelway::io
