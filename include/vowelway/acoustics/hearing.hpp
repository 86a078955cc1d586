// SPDX-License-Identifier: MIT
// Which vowel a listener is predicted to hear from the harmonics that are there.
// Threads: a VowelSpace, once made, is only read; any number at once.
#pragma once

#include "vowelway/acoustics/note_spectrum.hpp"
#include "vowelway/acoustics/transfer.hpp"
#include "vowelway/core/units.hpp"
#include "vowelway/core/vowel.hpp"

#include <cstddef>
#include <span>
#include <vector>

namespace vowelway::acoustics {

/// The vowel a listener is predicted to hear, and how far from the intended one.
struct HeardVowel {
    Vowel vowel;
    Bark distance;         ///< from the intended vowel's own place, >= 0
    double recognised = 1; ///< probability that the intended one is taken, among the singer's own, 0..1
};

/// A vowel as the ear places it.
///   openness  critical-band rate of the heard first peak, lowered where the peak lies so near fo that the
///             vowel is taken for a high one;
///   front     critical-band rate of the heard upper peak (fR2 with fR3 where they merge).
struct HeardPlace {
    Bark openness, front;
};

/// Perceptual distance, hypot(openness, 0.8 front): the weight with which the utterances of Hillenbrand et
/// al. 1995 are told apart best (docs/acoustics.md).
Bark distance(HeardPlace const& a, HeardPlace const& b);

/// Lowering of openness for a first peak `gap` above fo: 0.6 Bark (fitted, hearing_test.cpp) up to a gap of
/// 2.75 Bark, none from 3.75 on; the [high]/[non-high] boundary lies at 3..3.5 Bark (Hoemeke & Diehl 1994).
/// Fades out from fo = 300 to 600 Hz: it was found at speech pitches, and at the top all vowels are heard
/// open.
Bark high_vowel_shift(Bark gap, Pitch fo);

/// Where a note with this shape is heard. The first peak is the mean, in Bark, of the harmonics within 3.25
/// Bark of fR1 (spectral integration, Chistovich & Lublinskaya 1979, from memory; the weight falls smoothly
/// to the edge), each counting with its amplitude raised 6 dB an octave; so never below fo. The upper peak is
/// that of the harmonics within 3.25 Bark of fR2 and above the middle between the two. Leaves out  vibrato's
/// sweep, duration, consonants and context, which all help the listener.
HeardPlace heard_place(NoteSpectrum const& note, ResonanceSet const& shape);
/// The same when the powers of NoteSpectrum::powers are at hand.
HeardPlace heard_place(NoteSpectrum const& note, ResonanceSet const& shape, std::span<double const> powers);

/// A singer's vowels as heard when spoken: the map on which sung ones are judged.
class VowelSpace {
  public:
    struct Entry {
        Vowel vowel;
        ResonanceSet shape;
        HeardPlace spoken; ///< its place at speaking pitch
    };

    /// `vowels`: at least one, else std::invalid_argument. `quarter`: quarter-wave resonance of the tract.
    VowelSpace(std::vector<std::pair<Vowel, ResonanceSet>> const& vowels, Frequency quarter, Pitch speaking);

    std::span<Entry const> entries() const { return entries_; }
    Frequency quarter() const { return quarter_; }
    /// Where a shape is heard in speech: mean over an octave of pitches around the speaking pitch.
    HeardPlace spoken_place(ResonanceSet const& shape) const;

    /// What is heard instead of the intended vowel, an index in entries().
    HeardVowel hear(HeardPlace const& place, std::size_t intended) const;
    /// Distance from the intended vowel alone: all that an optimiser needs.
    Bark distance_from(HeardPlace const& place, std::size_t intended) const {
        return distance(place, entries_[intended].spoken);
    }
    /// Probability that a listener who picks among the singer's vowels takes the intended one.
    double recognised(HeardPlace const& place, std::size_t intended) const;

    /// The IPA name of a place: one of the singer's vowels, if need be with one diacritic (raised, lowered,
    /// advanced, retracted), or another common symbol of the chart. The plain intended vowel within about one
    /// just noticeable difference; symbols of the same rounding, and without diacritic, are preferred.
    Vowel name(HeardPlace const& place, std::size_t intended) const;
    /// The IPA shade that tells a singer which shape to aim at.
    Vowel shade_of(ResonanceSet const& target, std::size_t intended) const {
        return name(spoken_place(target), intended);
    }

  private:
    struct Candidate {
        Vowel vowel;
        HeardPlace place;
        double penalty; // Bark
        bool rounded;
    };
    void find_candidates();

    std::vector<Entry> entries_;
    Frequency quarter_;
    std::vector<NoteSpectrum> speech_;
    std::vector<Candidate> candidates_;
};

/// Mean speaking pitch that goes with a tract of this size: 131 Hz (men), 220 Hz (women), 238 Hz (children)
/// in Hillenbrand et al. 1995, on the line between them.
Pitch speaking_pitch(Frequency quarter);

} // namespace vowelway::acoustics
