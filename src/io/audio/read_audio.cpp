// SPDX-License-Identifier: MIT
#include "vowelway/io/audio/read_audio.hpp"

#include "io/audio/audio_reading.hpp"
#include "io/audio/mono_mixer.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"

#include <fmt/format.h>

#include <cmath>
#include <stdexcept>

namespace vowelway::io {

AudioFacts read_audio(std::string const& path, Frequency rate, AudioSink const& sink) try {
    auto const wanted = static_cast<int>(std::lround(in_hertz(rate)));
    if (wanted < 8000 || wanted > 96000) throw std::invalid_argument("read_audio: rate outside 8..96 kHz");
    files::require_readable(path); // the decoders tell neither a folder from a pipe nor wait for none
    if (auto const facts = read_plain_wave(path, wanted, sink)) return *facts;
    return read_with_ffmpeg(path, wanted, sink);
} catch (InputError& error) {
    throw error.at(Place{path, 0, 0, {}});
}

void require_bounded(MonoMixer const& read, std::string const& path) {
    if (read.length() > longest_recording)
        throw InputError(
            worded("lasts more than {0} hours", fmt::format("{:.0f}", in_seconds(longest_recording) / 3600)),
            worded("cut out the part with the vowels"), Place{path, 0, 0, {}});
}

std::string record_again() {
    return worded("record or copy it again, or open it in a player and save it as WAV");
}

AudioFacts facts_of(MonoMixer const& read, std::string format, int rate, int channels) {
    AudioFacts facts;
    facts.format = std::move(format);
    facts.rate = hertz(rate);
    facts.channels = channels;
    facts.length = read.length();
    facts.peak = read.peak();
    facts.clipped = read.clipped();
    return facts;
}

std::string clock_time(Duration moment) {
    auto const tenths = std::llround(std::max(0.0, in_seconds(moment)) * 10);
    auto const whole = tenths / 10;
    if (whole < 3600) return fmt::format("{}:{:02}.{}", whole / 60, whole % 60, tenths % 10);
    return fmt::format("{}:{:02}:{:02}.{}", whole / 3600, whole / 60 % 60, whole % 60, tenths % 10);
}

} // namespace vowelway::io
