// SPDX-License-Identifier: MIT
// From the formants of a probe to the resonances of the tract that sings: the glottis that whispers or
// creaks is more open than the one that sings, and shifts them.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/formants.hpp"
#include "vowelway/core/resonance.hpp"
#include "vowelway/core/vowel.hpp"

#include <array>
#include <optional>
#include <vector>

namespace vowelway::analysis {

/// How far Fk of a probe lies above fRk of the tract. Two deviations, because what is common to all vowels
/// of a singer can be learned from a few of them and the rest cannot.
struct Shift {
    Frequency mean;
    Frequency singer_sd;  ///< between singers, the same for all vowels of one
    Frequency vowel_sd;   ///< of one vowel around the singer's mean
    Frequency sd() const; ///< both together
};
/// For F1..F3 of one kind of probe. pairs > 0: learned from that many vowels measured in two ways.
struct ProbeShifts {
    std::array<Shift, 3> of;
    int pairs = 0;
};

/// The published shift. Whisper: +255 +-90, +115 +-105, +125 +-125 Hz; creak: +45 +-50, none found for fR2,
/// +65 +-120 Hz (Y. Swerdlin, J. Smith & J. Wolfe, J. Acoust. Soc. Am. 127, 2010, 2590). Sung: none. Our
/// judgement: the published deviation belongs in equal parts (as variances) to the singer and to the vowel;
/// +-60 Hz for fR2 of a creak, where the paper gives no significant shift; +-15, 20, 30 Hz for a sung probe,
/// whose folds are open for part of each period; +-25, 30, 40 Hz for a spoken one, whose glottis and larynx
/// are not those of singing.
ProbeShifts published_shift(ProbeKind kind);
std::array<ProbeShifts, 4> published_shifts(); ///< in the order of ProbeKind

/// Below this no fR1 is believed: the yielding walls keep a closed tract from resonating lower (180 to 190 Hz
/// measured; K. N. Stevens, Acoustic Phonetics, 1998).
inline constexpr Frequency lowest_first_resonance = hertz(200);

/// What one probe says of the tract.
struct TractReading {
    std::array<std::optional<Resonance>, 3> resonances;
    bool close_whisper = false; ///< whispered close vowel: the shift of fR1 cannot be the average one; the
                                ///< deviation of fR1 covers the range down to lowest_first_resonance
};

/// fR = F - shift, the variances added. Where that would fall below lowest_first_resonance for fR1, the mean
/// and deviation of the part of the distribution above it.
TractReading tract_reading(FormantReading const& measured, Vowel const& vowel, ProbeKind kind,
                           ProbeShifts const& shifts);

/// A vowel whose fR1 lies so low that the shift of a whisper swallows it: the close ones (chart height 1 or
/// less).
bool is_close(Vowel const& vowel);

/// One vowel measured with two kinds of probe.
struct ProbePair {
    FormantReading first, second;
};
/// Both kinds' shifts after seeing the pairs: the differences F(first) - F(second) are compared with what the
/// priors predict (a linear Gaussian update of the two means; each vowel adds its own deviation). Resonances
/// missing from a pair teach nothing. A sung probe's shift is left as it is unless it is one of the kinds.
void learn_shifts(ProbeShifts& first, ProbeShifts& second, std::vector<ProbePair> const& pairs);

} // namespace vowelway::analysis
