// SPDX-License-Identifier: MIT
#include "vowelway/io/audio/read_audio.hpp"

#include "io/audio/mono_mixer.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"

#include <fmt/format.h>

#include <cmath>
#include <stdexcept>

namespace vowelway::io {
namespace {

using namespace ffmpeg;

// Containers of sound only: no playlist, and nothing that would open another file.
constexpr char const* containers = "wav,w64,aiff,au,caf,flac,mp3,ogg,mov,matroska,aac,amr";
constexpr int lowest_rate = 8000, highest_rate = 768'000; // Hz; the most that sound cards offer
constexpr int most_channels = 32;
constexpr double missing_share = 0.02; // of the announced length, beyond which the file counts as broken off
constexpr double missing_least = 0.25; // s

Place in(std::string const& path) { return Place{path, 0, 0, {}}; }

std::string record_again() {
    return worded("record or copy it again, or open it in a player and save it as WAV");
}

Handle<AVFormatContext> open(std::string const& path) {
    files::require_readable(path); // the decoders tell neither a folder from a pipe nor wait for none
    AVDictionary* options = nullptr;
    av().av_dict_set(&options, "protocol_whitelist", "file", 0);
    av().av_dict_set(&options, "format_whitelist", containers, 0);
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

/// The state of one reading: what has been decoded, and where it went wrong.
class Reading {
  public:
    Reading(std::string const& path, AVCodecContext& decoder, int rate, AudioSink const& sink)
        : path_(path), decoder_(decoder), sink_(sink), mixer_(decoder, rate), frame_(av().av_frame_alloc()) {
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
            bool const more = give(mixer_.mix(frame_.get()));
            av().av_frame_unref(frame_.get());
            if (mixer_.broken()) return damaged();
            if (!more) return false;
            if (length() > longest_recording)
                throw InputError(worded("lasts more than {0} hours",
                                        fmt::format("{:.0f}", in_seconds(longest_recording) / 3600)),
                                 worded("cut out the part with the vowels"), in(path_));
        }
    }
    void finish() { give(mixer_.mix(nullptr)); }

    Duration length() const {
        return seconds(static_cast<double>(mixer_.samples_in()) / decoder_.sample_rate);
    }
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
    MonoMixer mixer_;
    Handle<AVFrame> frame_;
};

/// What the container announces, in seconds; 0 when it does not.
double announced_length(AVFormatContext const& container, AVStream const& stream) {
    if (stream.duration > 0) return static_cast<double>(stream.duration) * av_q2d(stream.time_base);
    return container.duration > 0 ? static_cast<double>(container.duration) / AV_TIME_BASE : 0;
}

} // namespace

AudioFacts read_audio(std::string const& path, Frequency rate, AudioSink const& sink) try {
    auto const wanted = static_cast<int>(std::lround(in_hertz(rate)));
    if (wanted < 8000 || wanted > 96000) throw std::invalid_argument("read_audio: rate outside 8..96 kHz");
    av().av_log_set_level(AV_LOG_QUIET);

    auto const container = open(path);
    int const index = av().av_find_best_stream(container.get(), AVMEDIA_TYPE_AUDIO, -1, -1, nullptr, 0);
    if (index < 0)
        throw InputError(worded("has no sound"), worded("choose a recording with sound"), in(path));
    for (unsigned s = 0; s < container->nb_streams; ++s)
        if (static_cast<int>(s) != index) container->streams[s]->discard = AVDISCARD_ALL;
    AVStream& stream = *container->streams[index];
    auto const decoder = decoder_of(stream, path);

    Reading reading(path, *decoder, wanted, sink);
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

    AudioFacts facts;
    facts.format = std::string(container->iformat->name) + " / " + av().avcodec_get_name(decoder->codec_id);
    facts.rate = hertz(decoder->sample_rate);
    facts.channels = decoder->ch_layout.nb_channels;
    facts.length = reading.length();
    facts.lossy = is_lossy(decoder->codec_id);
    facts.peak = reading.mixer().peak();
    facts.clipped = reading.mixer().clipped();
    return facts;
} catch (InputError& error) {
    throw error.at(in(path));
}

std::string clock_time(Duration moment) {
    auto const tenths = std::llround(std::max(0.0, in_seconds(moment)) * 10);
    auto const whole = tenths / 10;
    if (whole < 3600) return fmt::format("{}:{:02}.{}", whole / 60, whole % 60, tenths % 10);
    return fmt::format("{}:{:02}:{:02}.{}", whole / 3600, whole / 60 % 60, whole % 60, tenths % 10);
}

} // namespace vowelway::io
