// SPDX-License-Identifier: MIT
// Which vowel a listener is predicted to hear from the harmonics that are there.
// Threads: a VowelSpace, once made, is only read; any number at once.
#pragma once

#include "vowelway/acoustics/note_spectrum.hpp"
#include "vowelway/acoustics/transfer.hpp"
#include "vowelway/core/units.hpp"
#include "vowelway/core/vowel.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace vowelway::acoustics {

/// The vowel a listener is predicted to hear, and how far from the intended one.
struct HeardVowel {
    Vowel vowel;
    Bark distance;         ///< from the intended vowel's own place, >= 0
    double recognised = 1; ///< probability that the intended one is taken, among the singer's own, 0..1
    std::optional<Vowel> toward{}; ///< the plain letter it leans to, where it is clearly on the way there
    /// "i", "i, a little toward ɪ"
    std::string words() const;
};

/// A vowel as the ear places it.
///   openness  critical-band rate of the heard first peak, lowered as the pitch rises (pitch_shift) and where
///             the peak lies so near fo that the vowel is taken for a high one (high_vowel_shift);
///   front     critical-band rate of the heard upper peak (fR2 with fR3 where they merge).
struct HeardPlace {
    Bark openness, front;
};

/// What a Bark of the upper peak counts beside one of the first: the weight with which the utterances of
/// Hillenbrand et al. 1995 are told apart best (docs/acoustics.md).
inline constexpr double front_weight = 0.8;
/// Perceptual distance, hypot(openness, front_weight x front).
Bark distance(HeardPlace const& a, HeardPlace const& b);

/// Lowering of openness for a first peak `gap` above fo: 0.2 Bark at most (fitted), up to a gap of
/// 2.75 Bark, none from 3.75 on; the [high]/[non-high] boundary lies at 3..3.5 Bark (Hoemeke & Diehl 1994).
/// Fades out from fo = 520 to 620 Hz: it was found at speech pitches, and at the top all vowels are heard
/// open.
Bark high_vowel_shift(Bark gap, Pitch fo);

/// Lowering of openness for a pitch `fo` above the singer's low voice: a share of the way in Bark, less than
/// half of what an octave with the formants kept is heard to close a vowel (Slawson 1968, from memory:
/// 10..12 % of F1); openness goes with the distance of the first peak from fo (Traunmüller 1981), in non-high
/// vowels only in part (Hoemeke & Diehl 1994). Fades out as fo nears and passes fR1, where the fundamental is
/// the first peak itself. Fitted (docs/acoustics.md).
Bark pitch_shift(Bark fo, Bark low_voice, Bark r1);

/// Where a note with this shape is heard. The first peak is the mean, in Bark, of the harmonics around fR1
/// (3.6 Bark below, 3.2 above: spectral integration over 3..3.5 Bark, Chistovich & Lublinskaya 1979, from
/// memory; the weight falls smoothly to the edge), each counting with the root of its amplitude, near to
/// loudness (Stevens's exponent is 0.6); so never below fo. The upper peak is that of the harmonics within
/// 3.25 Bark of fR2 and above the middle between the two, by amplitude raised 6 dB an octave. Leaves out
/// vibrato's sweep, duration, consonants and context, which all help the listener.
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
    /// `signs`: the letters a vowel may be named by, such as those of a language; none: those of lyric
    /// diction. The first `always` vowels may always be named.
    VowelSpace(std::vector<std::pair<Vowel, ResonanceSet>> const& vowels, Frequency quarter,
               std::span<char32_t const> signs = {}, std::size_t always = static_cast<std::size_t>(-1));

    std::span<Entry const> entries() const { return entries_; }
    Frequency quarter() const { return quarter_; }
    /// Where a shape is heard in the low voice: mean over the octave below the mean speaking pitch.
    HeardPlace spoken_place(ResonanceSet const& shape) const;

    /// What is heard instead of the intended vowel, an index in entries(). The listener favours the intended
    /// vowel (by 0.5 Bark), and, rising or falling through a scale, the one named `before` (by 0.3 Bark).
    HeardVowel hear(HeardPlace const& place, std::size_t intended, Vowel const* before = nullptr) const;
    /// Distance from the intended vowel alone: all that an optimiser needs.
    Bark distance_from(HeardPlace const& place, std::size_t intended) const {
        return distance(place, entries_[intended].spoken);
    }
    /// Probability that a listener who picks among the singer's vowels takes the intended one.
    double recognised(HeardPlace const& place, std::size_t intended) const;

    /// The letters nearest to the intended vowel, four at most, each as a straight border: beyond it the ear
    /// takes a place for that letter. `open`, `front` (per Bark) and `from`: a place lies open x openness +
    /// front x front - from beyond it, in Bark.
    struct Border {
        double open = 0, front = 0, from = 1e6;
    };
    std::array<Border, 4> borders(std::size_t intended) const;
    /// The letter that tells a singer which way to aim from the intended vowel to this shape: the nearest of
    /// those that the shape is nearer to than the vowel's own is; the intended vowel when there is none, or
    /// within about one just noticeable difference.
    Vowel shade_of(ResonanceSet const& target, std::size_t intended) const;

  private:
    struct Candidate {
        Vowel vowel;
        HeardPlace place;
        double penalty; // Bark
    };
    void find_candidates(std::span<char32_t const> signs, std::size_t always);
    /// What naming a place like this candidate costs beside the distance, for this intended vowel.
    double reluctance(Candidate const& candidate, Vowel const& intended) const;
    /// The nearest candidate that `place` lies in the direction of, seen from `from`; null if there is none.
    Candidate const* leaning(HeardPlace const& place, HeardPlace const& from, Vowel const& from_vowel,
                             Vowel const& intended) const;

    std::vector<Entry> entries_;
    Frequency quarter_;
    std::vector<NoteSpectrum> speech_;
    std::vector<Candidate> candidates_;
};

/// The middle of the octave that ends a semitone below the mean speaking pitch: there every vowel is heard
/// as itself, and what is sung higher is heard against it. A choice: the octave around the speaking pitch
/// already has the turning points of women's /e o/ in it.
Pitch low_voice(Frequency quarter);

/// Mean speaking pitch that goes with a tract of this size: 131 Hz (men), 220 Hz (women), 238 Hz (children)
/// in Hillenbrand et al. 1995, on the line between them.
Pitch speaking_pitch(Frequency quarter);

} // namespace vowelway::acoustics
