// SPDX-License-Identifier: MIT
// FFmpeg's converter of samples. Private to the audio folder.
#pragma once

#include "io/audio/ffmpeg.hpp"
#include "vowelway/core/error.hpp"

#include <string>

namespace vowelway::io::ffmpeg {

/// What FFmpeg refuses comes from what the header claims.
InputError no_way(std::string const& why);

/// Of samples in this layout, from one format and rate (Hz) to another. Throws InputError where there is
/// none.
Handle<SwrContext> converter(AVChannelLayout& layout, AVSampleFormat from, int rate_from, AVSampleFormat to,
                             int rate_to);

} // namespace vowelway::io::ffmpeg
