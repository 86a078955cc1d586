// SPDX-License-Identifier: MIT
// Sound into files: WAV and FLAC with 16 bits, one channel. The same samples make the same bytes.
#pragma once

#include "vowelway/core/units.hpp"

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace vowelway::io {

enum class AudioForm { wav, flac };
/// By the ending of a file, ".wav" or ".flac".
std::optional<AudioForm> audio_form(std::string_view ending);

/// Takes samples (-1..1, what is outside is held there) as they come.
using AudioFeed = std::function<void(std::span<float const>)>;
/// Feeds all samples, in order, once.
using AudioMaker = std::function<void(AudioFeed const&)>;

/// Writes as the samples come: memory does not grow with the length. The file appears whole or not at all.
/// Throws InputError when it cannot be written.
void write_audio(std::filesystem::path const& destination, AudioForm form, Frequency rate,
                 AudioMaker const& make);

/// The same file as bytes.
std::string audio_bytes(AudioForm form, Frequency rate, AudioMaker const& make);

} // namespace vowelway::io
