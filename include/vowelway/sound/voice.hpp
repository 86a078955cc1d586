// SPDX-License-Identifier: MIT
// A sung voice as the planner has it: the harmonics of its source through the resonances of a shape, which
// may move; and a little noise of the breath.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/acoustics/note_spectrum.hpp"
#include "vowelway/acoustics/source.hpp"
#include "vowelway/core/pitch.hpp"
#include "vowelway/core/vibrato.hpp"
#include "vowelway/sound/programme.hpp"

#include <functional>
#include <memory>

namespace vowelway::sound {

/// What stays the same of one voice.
struct Voice {
    Frequency quarter;        ///< quarter-wave resonance of the tract, for what lies above fR2
    acoustics::Source source; ///< of the technique
    acoustics::Blur blur;     ///< as the planner widens the resonances
    /// Noise of the breath below the harmonics, on the whole. The ratio is about 20 dB in healthy speaking
    /// voices (common practice, no source), and more in trained ones.
    Decibels breath_below{26};
    bool breathy = true; ///< with that noise
};

/// One moment of singing.
struct Moment {
    Pitch pitch;
    Frequency r1, r2;
    Decibels loudness{0}; ///< against mezzo-forte: changes the slope of the source too
    double size = 1;      ///< of the sound, 0 silence .. 1
};

/// What is sung at each moment from the beginning; asked for in order of time.
using Course = std::function<Moment(Duration)>;

/// Harmonics up to 5 kHz, with the levels of acoustics::NoteSpectrum and the phases of the resonances, then
/// fading to nothing at 6 kHz: nothing can fold back. Moments are taken every 5 ms, in between all is
/// interpolated.
std::unique_ptr<Part> sung(Voice const& voice, Course course);

/// Level of each harmonic up to 5 kHz, dB re 20 µPa at 1 m, as NoteSpectrum computes it: for comparison.
std::vector<Decibels> sung_levels(Voice const& voice, Moment const& moment);

/// How far the pitch is from its middle: nothing at first, in full half a second after the onset of a tone.
Cents swing(Vibrato const& vibrato, Duration since_onset, Duration now);

/// The same vowel on the same pitch.
Course steady(Moment const& moment, Vibrato const& vibrato = {.extent = Cents{0}});

} // namespace vowelway::sound
