// SPDX-License-Identifier: MIT
#include "io/audio/ffmpeg.hpp"

#include "core/late_library.hpp"
#include "core/memory.hpp"

namespace vowelway::io::ffmpeg {
namespace {

/// The version that the headers describe: another has other structures.
LateLibrary library(std::string const& name, int version) {
    auto const number = std::to_string(version);
    return {"lib" + name + ".so." + number, LateLibrary::from_package("lib" + name + number)};
}

void bind_avformat(Decoding& f) {
    auto const from = library("avformat", LIBAVFORMAT_VERSION_MAJOR);
    VOWELWAY_BIND(avformat_open_input);
    VOWELWAY_BIND(avformat_find_stream_info);
    VOWELWAY_BIND(avformat_close_input);
    VOWELWAY_BIND(av_find_best_stream);
    VOWELWAY_BIND(av_read_frame);
}

void bind_avcodec(Decoding& f) {
    auto const from = library("avcodec", LIBAVCODEC_VERSION_MAJOR);
    VOWELWAY_BIND(avcodec_find_decoder);
    VOWELWAY_BIND(avcodec_alloc_context3);
    VOWELWAY_BIND(avcodec_parameters_to_context);
    VOWELWAY_BIND(avcodec_open2);
    VOWELWAY_BIND(avcodec_descriptor_get);
    VOWELWAY_BIND(avcodec_send_packet);
    VOWELWAY_BIND(avcodec_receive_frame);
    VOWELWAY_BIND(avcodec_free_context);
    VOWELWAY_BIND(avcodec_get_name);
    VOWELWAY_BIND(av_packet_alloc);
    VOWELWAY_BIND(av_packet_unref);
    VOWELWAY_BIND(av_packet_free);
}

void bind_avutil(Decoding& f) {
    auto const from = library("avutil", LIBAVUTIL_VERSION_MAJOR);
    VOWELWAY_BIND(av_dict_set);
    VOWELWAY_BIND(av_dict_free);
    VOWELWAY_BIND(av_log_set_level);
    VOWELWAY_BIND(av_frame_alloc);
    VOWELWAY_BIND(av_frame_unref);
    VOWELWAY_BIND(av_frame_free);
}

void bind_layouts(Resampling& f) {
    auto const from = library("avutil", LIBAVUTIL_VERSION_MAJOR);
    VOWELWAY_BIND(av_channel_layout_default);
    VOWELWAY_BIND(av_channel_layout_copy);
    VOWELWAY_BIND(av_channel_layout_uninit);
}

void bind_swresample(Resampling& f) {
    auto const from = library("swresample", LIBSWRESAMPLE_VERSION_MAJOR);
    VOWELWAY_BIND(swr_alloc_set_opts2);
    VOWELWAY_BIND(swr_init);
    VOWELWAY_BIND(swr_convert);
    VOWELWAY_BIND(swr_get_out_samples);
    VOWELWAY_BIND(swr_free);
}

Resampling load_resampling() {
    Resampling f{};
    bind_layouts(f);
    bind_swresample(f);
    return f;
}

Decoding load_decoding() {
    Decoding f{};
    require_memory(192); // for the hundred libraries behind them
    bind_avutil(f);
    bind_avcodec(f);
    bind_avformat(f);
    return f;
}

} // namespace

Resampling const& swr() {
    static Resampling const functions = load_resampling();
    return functions;
}

Decoding const& av() {
    static Decoding const functions = load_decoding();
    return functions;
}

} // namespace vowelway::io::ffmpeg
