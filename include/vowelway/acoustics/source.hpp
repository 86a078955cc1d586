// SPDX-License-Identifier: MIT
// The sound of the vocal folds before the tract shapes it.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/pitch.hpp"
#include "vowelway/core/units.hpp"

namespace vowelway::acoustics {

/// Spectrum of the glottal flow. Its shape is Fant's (1960, eq. 1.3-2) flow 1/(1 + (f/100 Hz)²), -12 dB an
/// octave above 100 Hz, with the slope left free; the fundamental's own level does not depend on pitch.
/// Leaves out  the reaction of the tract on the folds, noise, and the voice's personal colour.
struct Source {
    /// Slope an octave at medium loudness in the lower register. Published syntheses use -4 .. -30 dB.
    Decibels slope{-12};
    /// Slope in the upper register, reached gradually between the two frequencies below. Folds that hardly
    /// close make a steeper spectrum. A choice of ours; a belting source has upper_slope = slope.
    Decibels upper_slope{-22};
    Frequency upper_begins = hertz(400);
    Frequency upper_complete = hertz(800);
    /// Slope an octave gained with each decibel of loudness: sung 10 dB louder, the partials near 3 kHz grow
    /// by about 15 dB (Sundberg, from memory), 2.6 octaves above those that make the loudness.
    Decibels slope_per_loudness{0.2};

    /// Slope of a note. `loudness` is relative to medium (mf = 0 dB; about -10 for pp, +10 for ff).
    Decibels slope_at(Pitch fo, Decibels loudness = {}) const;
    /// Level of the glottal flow at `f` relative to its level at fo and medium loudness.
    Decibels flow_level(Frequency f, Pitch fo, Decibels loudness = {}) const;
};

/// Sound pressure at 1 m, in dB re 20 µPa, of a simple source in the open with a flow of 100 cm³/s rms at
/// `f`: p = rho f U/(2 r) (Stevens 1998). Rises 6 dB an octave.
Decibels radiated_level(Frequency f);

/// Gain at `f` of all resonances above the first `known` ones, taken at odd multiples of `quarter_wave`
/// (= c/4L, 500 Hz for 17.5 cm).
/// Source  Fant 1960 eq. 1.3-4: known = 2: 1.06x² + 0.0102x⁴, 3: 0.72x² + 0.0033x⁴, 4: 0.54x² + 0.00143x⁴ dB,
///         x = f/quarter_wave; x is held at 2 known, where the polynomial loses its meaning.
/// Errors  std::invalid_argument unless known is 2, 3 or 4.
Decibels higher_pole_correction(int known, Frequency f, Frequency quarter_wave);

} // namespace vowelway::acoustics
