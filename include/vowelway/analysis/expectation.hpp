// SPDX-License-Identifier: MIT
// What to look for in a probe of a vowel, from a singer's profile or an average voice.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/formants.hpp"
#include "vowelway/analysis/tract_reading.hpp"
#include "vowelway/core/singer.hpp"

namespace vowelway::analysis {

struct VowelExpectation {
    Expectation formants;
    Vowel taken_from; ///< the vowel of the profile that was used: the asked one or its neighbour on the chart
    bool neighbour = false;
};

/// Where the formants of this vowel, probed like this, are due: the singer's resonances with the shift of the
/// probe put on. The spread joins that of the profile, of the shift, and 10 % for an average voice (5 % for
/// the singer's own profile); it stays between 8 and 35 %. A vowel the profile lacks borrows the nearest one
/// on the IPA chart. Throws InputError for a profile without vowels.
VowelExpectation expect(Singer const& singer, Vowel const& vowel, ProbeKind kind, ProbeShifts const& shifts);

/// Mean distance of the resonances, c / 2L with c = 350 m/s, from the tract length, else from the third
/// resonances (2.5 distances), else from the usual length of the voice type (16.9 cm men, 14.1 cm women; K.
/// N. Stevens, Acoustic Phonetics, 1998; our choice between and above).
Frequency resonance_spacing(Singer const& singer);

} // namespace vowelway::analysis
