// SPDX-License-Identifier: MIT
// The harmonics of one sung note as they leave the mouth, for any number of shapes of the tract. Everything
// that does not depend on the shape is computed once, so that a planner may try thousands of shapes a note.
// Threads: a NoteSpectrum, once made, is only read; any number at once.
#pragma once

#include "vowelway/acoustics/source.hpp"
#include "vowelway/acoustics/transfer.hpp"

#include <span>
#include <vector>

namespace vowelway::acoustics {

/// Why no harmonic sits on a resonance for long: vibrato moves the one, the other is never placed exactly.
/// Levels are averaged, in decibels, over that misplacement. If it follows a Cauchy distribution with
/// half-width g, the average of a resonance of half-width b is exactly a resonance of half-width b + g; g is
/// chosen to share its quartiles with a sinusoidal vibrato (0.707 of its extent) and a normal placement error
/// (0.6745 SD).
struct Blur {
    Cents vibrato{50};               ///< extent to either side; common for classical voices (common practice)
    Frequency placement = hertz(40); ///< SD with which a singer places a resonance; 30..50 Hz, our judgement
    static constexpr Blur none() { return {Cents{0}, hertz(0)}; }
    /// Bandwidth that a resonance seems to have.
    Frequency widened(ResonancePeak const& peak) const;
};

class NoteSpectrum {
  public:
    static constexpr int most_harmonics = 160;

    /// Harmonics of `fo` up to 5 kHz (at least the fundamental, at most most_harmonics).
    /// `quarter`: quarter-wave resonance of the singer's tract, for the poles above fR4.
    NoteSpectrum(Pitch fo, Frequency quarter, Source const& source = {}, Decibels loudness = {},
                 Blur blur = {});

    Pitch pitch() const { return fo_; }
    int size() const { return static_cast<int>(place_.size()); }
    /// Where the pitches of this singer's low voice lie, against which the ear takes a pitch for high
    /// (low_voice() of acoustics/hearing.hpp).
    Bark low_voice() const { return low_voice_; }
    /// Critical-band rates of the harmonics, in Bark.
    std::span<double const> places() const { return place_; }

    /// A-weighted level of the note, 1 m from the mouth in the open, dB re 20 µPa.
    Decibels level(ResonanceSet const& shape) const;
    /// Level of every harmonic, unweighted, dB re 20 µPa.
    std::vector<Decibels> harmonic_levels(ResonanceSet const& shape) const;
    /// The same as powers (squared pressures re (20 µPa)²); `out` holds at least size() numbers.
    void powers(ResonanceSet const& shape, std::span<double> out) const;
    /// A-weighted level of a note with these powers.
    Decibels level_of(std::span<double const> powers) const;

  private:
    Pitch fo_;
    Blur blur_;
    Bark low_voice_;
    std::vector<double> squared_; // f² of each harmonic, kHz²
    std::vector<double> source_;  // power without the resonances
    std::vector<double> weight_;  // A-weighting as a power ratio
    std::vector<double> place_;   // Bark
};

} // namespace vowelway::acoustics
