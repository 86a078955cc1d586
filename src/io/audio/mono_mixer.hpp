// SPDX-License-Identifier: MIT
// From decoded frames to mono samples at one rate, looking for clipping on the way. Private to the
// audio folder.
#pragma once

#include "io/audio/ffmpeg.hpp"
#include "vowelway/io/audio/read_audio.hpp"

#include <cstdint>
#include <span>
#include <vector>

namespace vowelway::io::ffmpeg {

/// Three steps for each frame: to planar floats at the file's rate, watch the peaks and average the
/// channels, resample.
class MonoMixer {
  public:
    MonoMixer(AVCodecContext const& decoder, int rate);

    /// The samples of `frame` (null: what the resampler still holds). Valid until the next call.
    std::span<float const> mix(AVFrame const* frame);

    std::int64_t samples_in() const { return samples_in_; } ///< per channel, at the file's rate
    double peak() const { return peak_; }
    bool broken() const { return broken_; } ///< a sample was no number
    std::vector<TimeSpan> const& clipped() const { return clipped_; }

  private:
    void watch_channel(std::size_t channel, std::span<float const> samples);
    void note_clipping(std::int64_t from, std::int64_t to);

    int rate_in_, rate_out_;
    std::size_t channels_;
    std::int64_t samples_in_ = 0;
    double peak_ = 0;
    bool broken_ = false;
    std::vector<TimeSpan> clipped_;
    struct Run { // of equal samples at the top of the range, going on at the end of a frame
        float value = 0;
        int length = 0;
    };
    std::vector<Run> runs_;
    Handle<SwrContext> to_float_, to_rate_;
    std::vector<std::vector<float>> planes_;
    std::vector<float> mono_, out_;
};

} // namespace vowelway::io::ffmpeg
