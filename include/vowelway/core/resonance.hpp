// SPDX-License-Identifier: MIT
// Resonances of the vocal tract, always with their uncertainty; harmonics of the voice.
#pragma once

#include "vowelway/core/pitch.hpp"
#include "vowelway/core/units.hpp"
#include "vowelway/core/vowel.hpp"

#include <compare>
#include <optional>
#include <string>

namespace vowelway {

/// n of nfo; 1 is the fundamental.
struct Harmonic {
    int number = 1;
    std::string str() const; ///< "fo", "2fo"
    friend auto operator<=>(Harmonic const&, Harmonic const&) = default;
};
Frequency frequency_of(Harmonic n, Pitch fo);

/// k of fRk.
struct ResonanceNumber {
    int number = 1;
    std::string str() const; ///< "fR1"
    friend auto operator<=>(ResonanceNumber const&, ResonanceNumber const&) = default;
};

/// A vocal-tract resonance fRk with the standard deviation of what is known of it.
/// (fR, not "formant": a formant F is what is measured in the radiated sound; Titze et al. 2015.)
struct Resonance {
    Frequency centre;
    Frequency sd;                       ///< one standard deviation, > 0
    bool sd_assumed = false;            ///< the deviation was not measured but is the method's default
    std::optional<Frequency> bandwidth; ///< BRk at half power, when measured

    /// The deviation as an interval around the centre: 1200 log2(1 + sd/centre).
    Cents sd_cents() const;
};

/// How a value became known. The default deviations belong to the method (docs/formulas.md).
enum class Method { typed, whisper, creak, sung, published, estimated };
std::string_view to_string(Method method);

/// What is known of one vowel of one singer. r1 < r2 < r3 < r4 always.
struct VowelResonances {
    Vowel vowel;
    Resonance r1, r2;
    std::optional<Resonance> r3, r4;
    bool estimated = false; ///< not measured for this singer; see `origin`
    std::string origin; ///< for estimated ones, a clause: "estimated from /e/ and /a/ and the average tenor"

    /// The k-th resonance if known.
    std::optional<Resonance> get(ResonanceNumber k) const;
};

} // namespace vowelway
