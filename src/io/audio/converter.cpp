// SPDX-License-Identifier: MIT
#include "io/audio/converter.hpp"

#include "vowelway/core/wording.hpp"

namespace vowelway::io::ffmpeg {

InputError no_way(std::string const& why) {
    return InputError(worded("its samples cannot be used: {0}", why),
                      worded("save it as WAV with one or two channels"));
}

Handle<SwrContext> converter(AVChannelLayout& layout, AVSampleFormat from, int rate_from, AVSampleFormat to,
                             int rate_to) {
    SwrContext* raw = nullptr;
    if (swr().swr_alloc_set_opts2(&raw, &layout, to, rate_to, &layout, from, rate_from, 0, nullptr) < 0)
        throw no_way(worded("there is no converter for its samples"));
    Handle<SwrContext> made{raw};
    if (swr().swr_init(made.get()) < 0) throw no_way(worded("the converter of samples does not start"));
    return made;
}

} // namespace vowelway::io::ffmpeg
