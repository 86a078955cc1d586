// SPDX-License-Identifier: MIT
// Any recording a phone or a recorder makes, as a stream of mono samples at the rate asked for.
// The memory used does not depend on the length of the file.
#pragma once

#include "vowelway/core/units.hpp"

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace vowelway::io {

/// What was found while reading, complete once reading is over.
struct AudioFacts {
    std::string format; ///< container and coding, "mov / aac"
    Frequency rate;     ///< of the file, before resampling
    int channels = 1;
    Duration length;    ///< of what was decoded
    bool lossy = false; ///< the coding leaves out what it takes to be inaudible
    double peak = 0;    ///< largest magnitude of any sample, 1 being full scale
    /// Moments at full scale: three or more equal samples in a row at the top of the range. Spans closer
    /// than 20 ms are one; after `clipped_limit` of them the last one is stretched.
    std::vector<TimeSpan> clipped;
};

inline constexpr Duration longest_recording = seconds(4 * 3600.0); ///< more is refused: it is not a probe
inline constexpr std::size_t clipped_limit = 1000;

/// Called with successive samples (-1..1, all channels averaged); returns false to stop reading.
using AudioSink = std::function<bool(std::span<float const>)>;

/// Reads wav, aiff, caf, flac, mp3, ogg, opus, m4a, aac, amr, webm and the sound of mp4 and mov.
/// `rate` between 8 and 96 kHz. Only the named local file is read, never an address on a network.
/// Throws InputError when the file is missing, holds no sound, is damaged (with the moment) or breaks off,
/// is sampled below 8 or above 768 kHz, has more than 32 channels, or is longer than `longest_recording`.
/// What the sink was given before a throw must not be used.
AudioFacts read_audio(std::string const& path, Frequency rate, AudioSink const& sink);

/// "0:03.2" or "1:02:03.4": a moment of a recording as a player shows it.
std::string clock_time(Duration moment);

} // namespace vowelway::io
