// SPDX-License-Identifier: MIT
// Plain sounds: tones, narrow bands of noise, the click of a beat.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/pitch.hpp"
#include "vowelway/sound/programme.hpp"

#include <memory>

namespace vowelway::sound {

/// A sine.
std::unique_ptr<Part> tone(Frequency f, Decibels level);

/// Noise in a band so narrow that it has a pitch: a tenth of its frequency wide, at least 60 Hz, at half
/// power; `level` is that of the whole band.
std::unique_ptr<Part> noise_band(Frequency centre, Decibels level);

/// A soft tone to sing after: a fundamental and three weaker harmonics.
std::unique_ptr<Part> guide_tone(Pitch pitch, Decibels level);

/// A short knock that dies away within 50 ms; higher on the first beat of a bar.
std::unique_ptr<Part> click(bool first_of_bar, Decibels level);

/// The level at which a tone or a band at `f` is as loud as one of `level` at 1 kHz, by A-weighting.
Decibels balanced(Frequency f, Decibels level);

/// Largest sample of a sine of this level.
double peak_of(Decibels level);

} // namespace vowelway::sound
