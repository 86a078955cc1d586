// SPDX-License-Identifier: MIT
// Sung pitch, the names of pitches, and the tuning that binds the two.
#pragma once

#include "vowelway/core/units.hpp"

#include <compare>
#include <string>
#include <string_view>

namespace vowelway {

/// The pitch that is sung: the frequency fo at which the vocal folds oscillate.
/// Not a resonance, though both are frequencies: the two kinds do not mix (Titze et al. 2015,
/// J. Acoust. Soc. Am. 137, 3005, separates fo from fR; the notation is used throughout).
class Pitch {
  public:
    /// Range: above 0 Hz, finite; anything else throws InputError.
    explicit Pitch(Frequency fo);

    Frequency frequency() const { return fo_; }

    friend Pitch operator+(Pitch p, Cents c);
    friend Pitch operator-(Pitch p, Cents c) { return p + -c; }
    friend Cents operator-(Pitch a, Pitch b); ///< positive when a is higher
    friend auto operator<=>(Pitch const& a, Pitch const& b) { return a.fo_.value() <=> b.fo_.value(); }
    friend bool operator==(Pitch const& a, Pitch const& b) { return a.fo_ == b.fo_; }

  private:
    Frequency fo_;
};

/// Interval from `from` up to `to`, for any two frequencies: 1200 log2(to/from).
Cents interval(Frequency from, Frequency to);

/// A pitch as it is spelled on the staff: step A..G, alteration in semitones (quarter tones are
/// halves), octave of scientific pitch notation (C4 is middle C).
struct SpelledPitch {
    char step = 'C';
    double alter = 0;
    int octave = 4;

    /// Semitones above C-1, so that C4 is 60 and A4 is 69 (the MIDI numbering); halves for quarter tones.
    double key_number() const;
    /// "F♯4", "B♭3", "C4"; double signs as ♯♯ and ♭♭; quarter tones as a signed number of cents.
    std::string str() const;

    friend bool operator==(SpelledPitch const&, SpelledPitch const&) = default;
};

/// Reads "F#4", "F♯4", "Bb3", "B♭3", "c4", "C##4", "Cx4". Throws InputError saying what a pitch looks like.
SpelledPitch parse_spelled_pitch(std::string_view text);

/// The same pitch moved by semitones, spelled with the fewest accidentals (sharps on a tie).
SpelledPitch transposed(SpelledPitch const& pitch, double by_semitones);

/// The nearest named pitch and how far away from it: "F4 +20 c".
struct NamedPitch {
    SpelledPitch pitch;
    Cents deviation; ///< -50 .. +50

    std::string str() const; ///< "F4 +20 c"; the deviation is left out when it rounds to 0
};

/// Twelve-tone equal temperament over a chosen A4 (ISO 16:1975: 440 Hz).
struct Tuning {
    Frequency a4 = hertz(440);

    Pitch pitch(double key_number) const; ///< f = a4 2^((key-69)/12)
    Pitch pitch(SpelledPitch const& p) const { return pitch(p.key_number()); }
    double key_number(Frequency f) const;
    NamedPitch name(Frequency f) const;
    NamedPitch name(Pitch p) const { return name(p.frequency()); }
};

/// A frequency as a person may type it: "698 Hz", "698", "F5", "F5 +20c", "D#6 -12 cents".
/// A bare number is hertz. Throws InputError.
Frequency parse_frequency(std::string_view text, Tuning const& tuning);

/// From the lower to the higher pitch, both included.
struct PitchRange {
    SpelledPitch low, high;
    std::string str() const; ///< "C3..A4"
};

/// Reads "C3..A4" (also "C3-A4", "C3 to A4"). Throws InputError when it is not a range or upside down.
PitchRange parse_pitch_range(std::string_view text);

} // namespace vowelway
