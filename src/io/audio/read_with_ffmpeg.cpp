// SPDX-License-Identifier: MIT
#include "io/audio/audio_reading.hpp"
#include "io/audio/converter.hpp"
#include "io/audio/mono_mixer.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <cmath>
#include <stdexcept>

namespace vowelway::io {
namespace {

using namespace ffmpeg;

// Containers of sound only: no playlist, and nothing that would open another file.
constexpr char const* containers = "wav,w64,aiff,au,caf,flac,mp3,ogg,mov,matroska,aac,amr";
constexpr double missing_share = 0.02; // of the announced length, beyond which the file counts as broken off
constexpr double missing_least = 0.25; // s

Place in(std::string const& path) { return Place{path, 0, 0, {}}; }

Handle<AVFormatContext> open(std::string const& path) {
    AVDictionary* options = nullptr;
    av().av_dict_set(&options, "protocol_whitelist", "file", 0);
    av().av_dict_set(&options, "format_whitelist", containers, 0);
    av().av_dict_set(&options, "max_probe_packets", "4", 0); // no other coding is looked for within samples
    AVFormatContext* raw = nullptr;
    int const failed = av().avformat_open_input(&raw, ("file:" + path).c_str(), nullptr, &options);
    av().av_dict_free(&options);
    if (failed < 0)
        throw InputError(
            worded("is not a recording that can be read"),
            worded("wav, flac, mp3, ogg, opus, m4a, aac, webm and mp4 are; or it is damaged: {0}",
                   record_again()),
            in(path));
    Handle<AVFormatContext> opened{raw};
    if (av().avformat_find_stream_info(opened.get(), nullptr) < 0)
        throw InputError(worded("is damaged at its beginning"), record_again(), in(path));
    return opened;
}

Handle<AVCodecContext> decoder_of(AVStream const& stream, std::string const& path) {
    auto const* const codec = av().avcodec_find_decoder(stream.codecpar->codec_id);
    if (!codec)
        throw InputError(worded("its audio format cannot be read"), worded("save it as WAV or FLAC first"),
                         in(path));
    Handle<AVCodecContext> decoder{av().avcodec_alloc_context3(codec)};
    if (!decoder || av().avcodec_parameters_to_context(decoder.get(), stream.codecpar) < 0)
        throw InputError(worded("is damaged at its beginning"), record_again(), in(path));
    decoder->thread_count = 1;
    if (av().avcodec_open2(decoder.get(), codec, nullptr) < 0 || decoder->sample_rate <= 0 ||
        decoder->ch_layout.nb_channels <= 0)
        throw InputError(worded("is damaged at its beginning"), record_again(), in(path));
    if (decoder->sample_rate < lowest_rate)
        throw InputError(
            worded("is sampled at only {0} Hz: fR2 and fR3 would be missing", decoder->sample_rate),
            worded("record at 16 kHz or more (any phone's voice recorder does)"), in(path));
    if (decoder->sample_rate > highest_rate)
        throw InputError(worded("says that it is sampled at {0} Hz; at most {1} are read",
                                decoder->sample_rate, highest_rate),
                         record_again(), in(path));
    if (decoder->ch_layout.nb_channels > most_channels)
        throw InputError(
            worded("has {0} channels; at most {1} are read", decoder->ch_layout.nb_channels, most_channels),
            worded("save it as one or two channels"), in(path));
    return decoder;
}

bool is_lossy(AVCodecID id) {
    auto const* const described = av().avcodec_descriptor_get(id);
    return described && (described->props & AV_CODEC_PROP_LOSSLESS) == 0;
}

/// Decoded frames as planes of floats.
class PlanesOfFrames {
  public:
    explicit PlanesOfFrames(AVCodecContext const& decoder)
        : planes_(static_cast<std::size_t>(decoder.ch_layout.nb_channels)) {
        AVChannelLayout layout{};
        if (decoder.ch_layout.order == AV_CHANNEL_ORDER_UNSPEC)
            swr().av_channel_layout_default(&layout, decoder.ch_layout.nb_channels);
        else
            swr().av_channel_layout_copy(&layout, &decoder.ch_layout);
        to_float_ = converter(layout, decoder.sample_fmt, decoder.sample_rate, AV_SAMPLE_FMT_FLTP,
                              decoder.sample_rate);
        swr().av_channel_layout_uninit(&layout);
    }
    Planes const& of(AVFrame const& frame) {
        std::vector<std::uint8_t*> outputs;
        for (auto& p : planes_) {
            p.resize(static_cast<std::size_t>(frame.nb_samples));
            outputs.push_back(reinterpret_cast<std::uint8_t*>(p.data()));
        }
        auto** const input = const_cast<std::uint8_t const**>(frame.extended_data);
        if (swr().swr_convert(to_float_.get(), outputs.data(), frame.nb_samples, input, frame.nb_samples) !=
            frame.nb_samples)
            throw no_way(worded("the converter lost samples"));
        return planes_;
    }

  private:
    Handle<SwrContext> to_float_;
    Planes planes_;
};

/// The state of one reading: what has been decoded, and where it went wrong.
class Reading {
  public:
    Reading(std::string const& path, AVCodecContext& decoder, int rate, AudioSink const& sink)
        : path_(path), decoder_(decoder), sink_(sink), planes_(decoder),
          mixer_(decoder.ch_layout.nb_channels, decoder.sample_rate, rate), frame_(av().av_frame_alloc()) {
        if (!frame_) throw std::bad_alloc();
    }

    /// Decodes a packet (null: the last frames). Returns false when the sink wants no more.
    bool decode(AVPacket const* packet) {
        int const sent = av().avcodec_send_packet(&decoder_, packet);
        if (sent < 0 && sent != AVERROR_EOF) return damaged();
        for (;;) {
            int const got = av().avcodec_receive_frame(&decoder_, frame_.get());
            if (got == AVERROR(EAGAIN) || got == AVERROR_EOF) return true;
            if (got < 0) return damaged();
            if (frame_->sample_rate != decoder_.sample_rate ||
                frame_->ch_layout.nb_channels != decoder_.ch_layout.nb_channels)
                throw InputError(
                    worded("changes its sampling rate or its channels at {0}", clock_time(length())),
                    worded("save each part as a separate file"), in(path_));
            bool const more = give(mixer_.mix(planes_.of(*frame_)));
            av().av_frame_unref(frame_.get());
            if (mixer_.broken()) return damaged();
            if (!more) return false;
            require_bounded(mixer_, path_);
        }
    }
    void finish() { give(mixer_.rest()); }

    Duration length() const { return mixer_.length(); }
    MonoMixer const& mixer() const { return mixer_; }

  private:
    /// Encoders may leave a stub before the first frame; later a lost packet is a hole in the sound.
    bool damaged() const {
        if (mixer_.samples_in() == 0) return true;
        throw InputError(worded("is damaged at {0}", clock_time(length())), record_again(), in(path_));
    }
    bool give(std::span<float const> samples) { return samples.empty() || sink_(samples); }

    std::string const& path_;
    AVCodecContext& decoder_;
    AudioSink const& sink_;
    PlanesOfFrames planes_;
    MonoMixer mixer_;
    Handle<AVFrame> frame_;
};

/// What the container announces, in seconds; 0 when it does not.
double announced_length(AVFormatContext const& container, AVStream const& stream) {
    if (stream.duration > 0) return static_cast<double>(stream.duration) * av_q2d(stream.time_base);
    return container.duration > 0 ? static_cast<double>(container.duration) / AV_TIME_BASE : 0;
}

} // namespace

AudioFacts read_with_ffmpeg(std::string const& path, int rate, AudioSink const& sink) {
    av().av_log_set_level(AV_LOG_QUIET);

    auto const container = open(path);
    int const index = av().av_find_best_stream(container.get(), AVMEDIA_TYPE_AUDIO, -1, -1, nullptr, 0);
    if (index < 0)
        throw InputError(worded("has no sound"), worded("choose a recording with sound"), in(path));
    for (unsigned s = 0; s < container->nb_streams; ++s)
        if (static_cast<int>(s) != index) container->streams[s]->discard = AVDISCARD_ALL;
    AVStream& stream = *container->streams[index];
    auto const decoder = decoder_of(stream, path);

    Reading reading(path, *decoder, rate, sink);
    Handle<AVPacket> packet{av().av_packet_alloc()};
    if (!packet) throw std::bad_alloc();
    bool more = true;
    while (more) {
        int const read = av().av_read_frame(container.get(), packet.get());
        if (read == AVERROR_EOF) break;
        if (read < 0)
            throw InputError(worded("is damaged at {0}", clock_time(reading.length())), record_again(),
                             in(path));
        if (packet->stream_index == index) {
            if (packet->flags & AV_PKT_FLAG_CORRUPT)
                throw InputError(worded("is damaged at {0}", clock_time(reading.length())), record_again(),
                                 in(path));
            more = reading.decode(packet.get());
        }
        av().av_packet_unref(packet.get());
    }
    if (more && reading.decode(nullptr)) {
        reading.finish();
        double const found = in_seconds(reading.length());
        double const announced = announced_length(*container, stream);
        if (found == 0)
            throw InputError(worded("has no sound"), worded("choose a recording with sound"), in(path));
        if (announced - found > std::max(missing_least, missing_share * announced))
            throw InputError(worded("breaks off at {0} but should last {1}", clock_time(reading.length()),
                                    clock_time(seconds(announced))),
                             record_again(), in(path));
    }

    auto facts =
        facts_of(reading.mixer(),
                 std::string(container->iformat->name) + " / " + av().avcodec_get_name(decoder->codec_id),
                 decoder->sample_rate, decoder->ch_layout.nb_channels);
    facts.lossy = is_lossy(decoder->codec_id);
    return facts;
}

} // namespace vowelway::io
