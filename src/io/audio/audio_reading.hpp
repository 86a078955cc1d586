// SPDX-License-Identifier: MIT
// The two ways to read a recording. Private to the audio folder.
#pragma once

#include "vowelway/io/audio/read_audio.hpp"

#include <optional>
#include <string>

namespace vowelway::io {

class MonoMixer;

/// A WAV file of plain samples whose header is without fault, by libsndfile, which starts in a millisecond.
/// Nothing for every other file, before anything is given to the sink: FFmpeg reads it, or says what is
/// wrong.
std::optional<AudioFacts> read_plain_wave(std::string const& path, int rate, AudioSink const& sink);

/// Every form, by FFmpeg, whose decoders take some 25 ms to load.
AudioFacts read_with_ffmpeg(std::string const& path, int rate, AudioSink const& sink);

inline constexpr int lowest_rate = 8000, highest_rate = 768'000; ///< Hz; the most that sound cards offer
inline constexpr int most_channels = 32;

/// Throws InputError when more has been read than `longest_recording`.
void require_bounded(MonoMixer const& read, std::string const& path);

/// The way out of a damaged file.
std::string record_again();

/// What is the same however it was read: length, peak, clipping.
AudioFacts facts_of(MonoMixer const& read, std::string format, int rate, int channels);

} // namespace vowelway::io
