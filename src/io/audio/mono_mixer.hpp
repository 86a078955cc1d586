// SPDX-License-Identifier: MIT
// From decoded samples to mono at one rate, looking for clipping on the way. Private to the audio folder.
#pragma once

#include "io/audio/ffmpeg.hpp"
#include "vowelway/io/audio/read_audio.hpp"

#include <cstdint>
#include <span>
#include <vector>

namespace vowelway::io {

/// The samples of each channel, all of one length; 1 is full scale.
using Planes = std::vector<std::vector<float>>;

/// For each block: watch the peaks, average the channels, resample.
class MonoMixer {
  public:
    MonoMixer(int channels, int rate_in, int rate_out);

    /// What comes out for a block of at least one channel. Valid until the next call.
    std::span<float const> mix(Planes const& block);
    /// What the resampler still holds.
    std::span<float const> rest();

    std::int64_t samples_in() const { return samples_in_; } ///< per channel, at the file's rate
    Duration length() const;                                ///< of these
    double peak() const { return peak_; }
    bool broken() const { return broken_; } ///< a sample was no number
    std::vector<TimeSpan> const& clipped() const { return clipped_; }

  private:
    /// The largest magnitude; infinity where a sample is no number.
    float watch_channel(std::size_t channel, std::span<float const> samples);
    void note_clipping(std::int64_t from, std::int64_t to);
    void average(Planes const& block);
    void limit();
    /// Nothing: the end, what the resampler still holds.
    std::span<float const> resampled(std::span<float const> mono);

    int rate_in_;
    std::int64_t samples_in_ = 0;
    float peak_ = 0;
    bool broken_ = false;
    std::vector<TimeSpan> clipped_;
    struct Run { // of equal samples at the top of the range, going on at the end of a block
        float value = 0;
        int length = 0;
    };
    std::vector<Run> runs_;
    ffmpeg::Handle<SwrContext> to_rate_;
    std::vector<float> mono_, out_;
};

} // namespace vowelway::io
