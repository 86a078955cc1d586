// SPDX-License-Identifier: MIT
#include "io/audio/mono_mixer.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace vowelway::io::ffmpeg {
namespace {

constexpr float full_scale = 0.985F; // a limiter's ceiling counts as well: samples held equal show it
constexpr float loudest_sample = 8;  // files of floats may exceed full scale, within reason
constexpr int clipped_run = 3;
constexpr double joined_below = 0.020; // s

/// What FFmpeg refuses comes from what the header claims.
InputError no_way(std::string const& why) {
    return InputError(worded("its samples cannot be used: {0}", why),
                      worded("save it as WAV with one or two channels"));
}

Handle<SwrContext> converter(AVChannelLayout& layout, AVSampleFormat from, int rate_from, AVSampleFormat to,
                             int rate_to) {
    SwrContext* raw = nullptr;
    if (av().swr_alloc_set_opts2(&raw, &layout, to, rate_to, &layout, from, rate_from, 0, nullptr) < 0)
        throw no_way(worded("there is no converter for its samples"));
    Handle<SwrContext> made{raw};
    if (av().swr_init(made.get()) < 0) throw no_way(worded("the converter of samples does not start"));
    return made;
}

} // namespace

MonoMixer::MonoMixer(AVCodecContext const& decoder, int rate)
    : rate_in_(decoder.sample_rate), rate_out_(rate),
      channels_(static_cast<std::size_t>(decoder.ch_layout.nb_channels)), runs_(channels_),
      planes_(channels_) {
    AVChannelLayout layout{};
    if (decoder.ch_layout.order == AV_CHANNEL_ORDER_UNSPEC)
        av().av_channel_layout_default(&layout, decoder.ch_layout.nb_channels);
    else
        av().av_channel_layout_copy(&layout, &decoder.ch_layout);
    to_float_ = converter(layout, decoder.sample_fmt, rate_in_, AV_SAMPLE_FMT_FLTP, rate_in_);
    av().av_channel_layout_uninit(&layout);
    AVChannelLayout mono = AV_CHANNEL_LAYOUT_MONO;
    to_rate_ = converter(mono, AV_SAMPLE_FMT_FLT, rate_in_, AV_SAMPLE_FMT_FLT, rate_out_);
}

std::span<float const> MonoMixer::mix(AVFrame const* frame) {
    mono_.clear();
    if (frame) {
        auto const count = static_cast<std::size_t>(frame->nb_samples);
        std::vector<std::uint8_t*> outputs(channels_);
        for (std::size_t c = 0; c < channels_; ++c) {
            planes_[c].resize(count);
            outputs[c] = reinterpret_cast<std::uint8_t*>(planes_[c].data());
        }
        auto** const input = const_cast<std::uint8_t const**>(frame->extended_data);
        if (av().swr_convert(to_float_.get(), outputs.data(), frame->nb_samples, input, frame->nb_samples) !=
            frame->nb_samples)
            throw no_way(worded("the converter lost samples"));
        mono_.assign(count, 0.0F);
        auto const share = 1.0F / static_cast<float>(channels_);
        for (std::size_t c = 0; c < channels_; ++c) {
            watch_channel(c, planes_[c]);
            for (std::size_t n = 0; n < count; ++n) mono_[n] += share * planes_[c][n];
        }
        for (auto& v : mono_) {
            if (!std::isfinite(v)) broken_ = true, v = 0;
            v = std::clamp(v, -loudest_sample, loudest_sample);
        }
        samples_in_ += frame->nb_samples;
    }
    auto const room = av().swr_get_out_samples(to_rate_.get(), static_cast<int>(mono_.size()));
    out_.resize(static_cast<std::size_t>(std::max(room, 1)));
    auto* output = reinterpret_cast<std::uint8_t*>(out_.data());
    auto const* input = reinterpret_cast<std::uint8_t const*>(mono_.data());
    auto const made = av().swr_convert(to_rate_.get(), &output, static_cast<int>(out_.size()),
                                       frame ? &input : nullptr, static_cast<int>(mono_.size()));
    if (made < 0) throw no_way(worded("the converter of rates failed"));
    out_.resize(static_cast<std::size_t>(made));
    return out_;
}

void MonoMixer::watch_channel(std::size_t channel, std::span<float const> samples) {
    auto& run = runs_[channel];
    for (std::size_t n = 0; n < samples.size(); ++n) {
        float const value = samples[n];
        float const size = std::abs(value);
        if (size < full_scale || !std::isfinite(size)) {
            run.length = 0;
            if (size > peak_) peak_ = size;
            continue;
        }
        if (size > peak_) peak_ = size;
        run.length = run.length > 0 && value == run.value ? run.length + 1 : 1;
        run.value = value;
        if (run.length >= clipped_run) {
            auto const here = samples_in_ + static_cast<std::int64_t>(n);
            note_clipping(here - run.length + 1, here + 1);
        }
    }
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

} // namespace vowelway::io::ffmpeg
