// SPDX-License-Identifier: MIT
// FFmpeg's functions, found when they are first needed, and owners for its handles. Its decoders load a
// hundred libraries, its resampler two: who needs only that asks for that. Private to the audio folder.
#pragma once

extern "C" {
#include <libavcodec/avcodec.h>
#include <libavformat/avformat.h>
#include <libavutil/channel_layout.h>
#include <libavutil/opt.h>
#include <libswresample/swresample.h>
}

#include <memory>

namespace vowelway::io::ffmpeg {

/// Those of the resampler, by their own names.
struct Resampling {
    decltype(&::av_channel_layout_default) av_channel_layout_default;
    decltype(&::av_channel_layout_copy) av_channel_layout_copy;
    decltype(&::av_channel_layout_uninit) av_channel_layout_uninit;
    decltype(&::swr_alloc_set_opts2) swr_alloc_set_opts2;
    decltype(&::swr_init) swr_init;
    decltype(&::swr_convert) swr_convert;
    decltype(&::swr_get_out_samples) swr_get_out_samples;
    decltype(&::swr_free) swr_free;
};

/// Those of the decoders.
struct Decoding {
    decltype(&::avformat_open_input) avformat_open_input;
    decltype(&::avformat_find_stream_info) avformat_find_stream_info;
    decltype(&::avformat_close_input) avformat_close_input;
    decltype(&::av_find_best_stream) av_find_best_stream;
    decltype(&::av_read_frame) av_read_frame;

    decltype(&::avcodec_find_decoder) avcodec_find_decoder;
    decltype(&::avcodec_alloc_context3) avcodec_alloc_context3;
    decltype(&::avcodec_parameters_to_context) avcodec_parameters_to_context;
    decltype(&::avcodec_open2) avcodec_open2;
    decltype(&::avcodec_descriptor_get) avcodec_descriptor_get;
    decltype(&::avcodec_send_packet) avcodec_send_packet;
    decltype(&::avcodec_receive_frame) avcodec_receive_frame;
    decltype(&::avcodec_free_context) avcodec_free_context;
    decltype(&::avcodec_get_name) avcodec_get_name;
    decltype(&::av_packet_alloc) av_packet_alloc;
    decltype(&::av_packet_unref) av_packet_unref;
    decltype(&::av_packet_free) av_packet_free;

    decltype(&::av_dict_set) av_dict_set;
    decltype(&::av_dict_free) av_dict_free;
    decltype(&::av_log_set_level) av_log_set_level;
    decltype(&::av_frame_alloc) av_frame_alloc;
    decltype(&::av_frame_unref) av_frame_unref;
    decltype(&::av_frame_free) av_frame_free;
};

/// Each loads its libraries at the first call. Throws InputError when one is missing.
Resampling const& swr();
Decoding const& av();

struct Free {
    void operator()(AVFormatContext* p) const { av().avformat_close_input(&p); }
    void operator()(AVCodecContext* p) const { av().avcodec_free_context(&p); }
    void operator()(AVPacket* p) const { av().av_packet_free(&p); }
    void operator()(AVFrame* p) const { av().av_frame_free(&p); }
    void operator()(SwrContext* p) const { swr().swr_free(&p); }
};
template <class T> using Handle = std::unique_ptr<T, Free>;

} // namespace vowelway::io::ffmpeg
