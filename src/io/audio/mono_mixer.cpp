// SPDX-License-Identifier: MIT
#include "io/audio/mono_mixer.hpp"

#include "io/audio/converter.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>

namespace vowelway::io {
namespace {

constexpr float full_scale = 0.985F; // a limiter's ceiling counts as well: samples held equal show it
constexpr float loudest_sample = 8;  // files of floats may exceed full scale, within reason
constexpr int clipped_run = 3;
constexpr double joined_below = 0.020; // s

/// The largest magnitude of a block; infinity where one sample is no number. Magnitudes are ordered as their
/// bits read as integers are (IEEE 754), and the greatest integer is found many at a time.
float largest_of(std::span<float const> x) {
    std::int32_t largest = 0;
    for (float v : x) largest = std::max(largest, std::bit_cast<std::int32_t>(v) & 0x7fffffff);
    auto const found = std::bit_cast<float>(largest);
    return std::isfinite(found) ? found : std::numeric_limits<float>::infinity();
}

} // namespace

MonoMixer::MonoMixer(int channels, int rate_in, int rate_out)
    : rate_in_(rate_in), runs_(static_cast<std::size_t>(channels)) {
    AVChannelLayout mono = AV_CHANNEL_LAYOUT_MONO;
    to_rate_ = ffmpeg::converter(mono, AV_SAMPLE_FMT_FLT, rate_in, AV_SAMPLE_FMT_FLT, rate_out);
}

Duration MonoMixer::length() const { return seconds(static_cast<double>(samples_in_) / rate_in_); }

std::span<float const> MonoMixer::mix(Planes const& block) {
    if (block.front().empty()) return {}; // the resampler would take it for the end
    float loudest = 0;
    for (std::size_t c = 0; c < block.size(); ++c) loudest = std::max(loudest, watch_channel(c, block[c]));
    samples_in_ += static_cast<std::int64_t>(block.front().size());
    bool const usual = loudest <= loudest_sample;
    if (block.size() == 1 && usual) return resampled(block.front());
    average(block);
    if (!usual) limit();
    return resampled(mono_);
}

std::span<float const> MonoMixer::rest() { return resampled({}); }

void MonoMixer::average(Planes const& block) {
    mono_ = block.front();
    if (block.size() > 1) {
        auto const share = 1.0F / static_cast<float>(block.size());
        for (auto& v : mono_) v *= share;
        for (std::size_t c = 1; c < block.size(); ++c)
            for (std::size_t n = 0; n < mono_.size(); ++n) mono_[n] += share * block[c][n];
    }
}

void MonoMixer::limit() {
    for (auto& v : mono_) {
        if (!std::isfinite(v)) broken_ = true, v = 0;
        v = std::clamp(v, -loudest_sample, loudest_sample);
    }
}

std::span<float const> MonoMixer::resampled(std::span<float const> mono) {
    auto const& swr = ffmpeg::swr();
    auto const room = swr.swr_get_out_samples(to_rate_.get(), static_cast<int>(mono.size()));
    out_.resize(static_cast<std::size_t>(std::max(room, 1)));
    auto* output = reinterpret_cast<std::uint8_t*>(out_.data());
    auto const* input = reinterpret_cast<std::uint8_t const*>(mono.data());
    auto const made = swr.swr_convert(to_rate_.get(), &output, static_cast<int>(out_.size()),
                                      mono.empty() ? nullptr : &input, static_cast<int>(mono.size()));
    if (made < 0) throw ffmpeg::no_way(worded("the converter of rates failed"));
    return std::span(out_).first(static_cast<std::size_t>(made));
}

float MonoMixer::watch_channel(std::size_t channel, std::span<float const> samples) {
    auto& run = runs_[channel];
    auto const largest = largest_of(samples);
    if (largest < full_scale) {
        peak_ = std::max(peak_, largest);
        run.length = 0;
        return largest;
    }
    for (std::size_t n = 0; n < samples.size(); ++n) {
        float const value = samples[n];
        float const size = std::abs(value);
        if (size > peak_) peak_ = size;
        if (size < full_scale || !std::isfinite(size)) {
            run.length = 0;
            continue;
        }
        run.length = run.length > 0 && value == run.value ? run.length + 1 : 1;
        run.value = value;
        if (run.length >= clipped_run) {
            auto const here = samples_in_ + static_cast<std::int64_t>(n);
            note_clipping(here - run.length + 1, here + 1);
        }
    }
    return largest;
}

void MonoMixer::note_clipping(std::int64_t from, std::int64_t to) {
    auto const start = seconds(static_cast<double>(std::max<std::int64_t>(from, 0)) / rate_in_);
    auto const end = seconds(static_cast<double>(to) / rate_in_);
    bool const joins = !clipped_.empty() && (clipped_.size() >= clipped_limit ||
                                             in_seconds(start - clipped_.back().end) < joined_below);
    if (!joins)
        clipped_.push_back({start, end});
    else if (end > clipped_.back().end)
        clipped_.back().end = end;
}

} // namespace vowelway::io
