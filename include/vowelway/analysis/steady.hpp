// SPDX-License-Identifier: MIT
// Where one vowel ends and the next begins in a breath, and which part of a vowel is steady.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/spectrum.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace vowelway::analysis {

/// A piece of one of several sounds.
struct Segment {
    std::size_t sound = 0; ///< index of the sound
    TimeSpan span;         ///< in the recording's time
};

/// The sounds cut into `count` pieces as even in spectrum as can be: the least sum of squared distances of
/// the frames' band levels from the mean of their piece, found exactly by dynamic programming. Every sound
/// has at least one piece, a piece lasts 0.16 s to 12 s. Nothing when that is impossible (more sounds than
/// pieces, too short).
std::optional<std::vector<Segment>> cut_into(std::vector<Sound> const& sounds, std::size_t count);

struct SteadyPart {
    TimeSpan span;
    std::vector<PowerSpectrum> blocks; ///< of successive eighths of it, as block_spectra makes them
    TimeSpan sounding;                 ///< the moments between which it was looked for
    Decibels unsteadiness; ///< root mean square distance of the frames' band levels from their mean
};
/// The longest part, at most 3 s, whose spectrum stays near that of the middle, between the first and the
/// last moment within 20 dB of the loudest tenth of a second (our choice); the edges are left out. Nothing
/// when that is shorter than 0.12 s.
std::optional<SteadyPart> steady_part(Sound const& sound, TimeSpan whole);

/// Root mean square distance of the band levels in the first third of what is sounding from those in the
/// last. 0 where that lasts 0.4 s or less, or the steady part takes a third of it or more.
Decibels movement(Sound const& sound, SteadyPart const& steady);

} // namespace vowelway::analysis
