// SPDX-License-Identifier: MIT
#include "vowelway/io/audio/microphone.hpp"

#include "core/late_library.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <cmath>
#include <cstdint>
#include <vector>

namespace vowelway::io {
namespace {

// The few functions of libasound.so.2 that are needed, as its documentation declares them (the interface is
// the same since ALSA 1.0); so nothing of it is needed to build.
struct Device;
using Frames = long;
constexpr int capture = 1, interleaved = 3, signed_16_bits = 2; // SND_PCM_STREAM_CAPTURE and so on
constexpr unsigned latency = 200'000;                           // microseconds

std::string other_ways() {
    return worded("record with a phone or another program, and name the file: vowelway measure take.m4a");
}

struct Functions {
    int (*snd_pcm_open)(Device**, char const*, int, int) = nullptr;
    int (*snd_pcm_set_params)(Device*, int, int, unsigned, unsigned, int, unsigned) = nullptr;
    Frames (*snd_pcm_readi)(Device*, void*, unsigned long) = nullptr;
    int (*snd_pcm_recover)(Device*, int, int) = nullptr;
    int (*snd_pcm_close)(Device*) = nullptr;
    char const* (*snd_strerror)(int) = nullptr;
    int (*snd_lib_error_set_handler)(void (*)(char const*, int, char const*, int, char const*,
                                              ...)) = nullptr;
};

void say_nothing(char const*, int, char const*, int, char const*, ...) {}

Functions load() {
    LateLibrary const from("libasound.so.2", other_ways());
    Functions f;
    VOWELWAY_BIND(snd_pcm_open);
    VOWELWAY_BIND(snd_pcm_set_params);
    VOWELWAY_BIND(snd_pcm_readi);
    VOWELWAY_BIND(snd_pcm_recover);
    VOWELWAY_BIND(snd_pcm_close);
    VOWELWAY_BIND(snd_strerror);
    VOWELWAY_BIND(snd_lib_error_set_handler);
    f.snd_lib_error_set_handler(say_nothing); // what is wrong is told by us
    return f;
}

} // namespace

struct Microphone::Open {
    Functions f = load();
    Device* device = nullptr;
    std::vector<std::int16_t> buffer;

    ~Open() {
        if (device) f.snd_pcm_close(device);
    }
    void require(long result, std::string const& what) const {
        if (result < 0)
            throw InputError(what + " (" + f.snd_strerror(static_cast<int>(result)) + ")",
                             worded("plug a microphone in, name another device, or {0}", other_ways()), {});
    }
};

Microphone::Microphone(std::string const& device, Frequency rate) : open_(std::make_unique<Open>()) {
    auto& o = *open_;
    o.require(o.f.snd_pcm_open(&o.device, device.c_str(), capture, 0),
              worded("there is no microphone \"{0}\"", device));
    o.require(o.f.snd_pcm_set_params(o.device, signed_16_bits, interleaved, 1,
                                     static_cast<unsigned>(std::lround(in_hertz(rate))), 1, latency),
              worded("the microphone \"{0}\" cannot record one channel with 16 bits", device));
}

Microphone::~Microphone() = default;

void Microphone::read(std::span<float> samples) {
    auto& o = *open_;
    for (std::size_t done = 0; done < samples.size();) {
        o.buffer.resize(samples.size() - done);
        auto got = o.f.snd_pcm_readi(o.device, o.buffer.data(), o.buffer.size());
        if (got < 0) {
            o.require(o.f.snd_pcm_recover(o.device, static_cast<int>(got), 1),
                      worded("the microphone no longer answers"));
            continue;
        }
        for (std::size_t n = 0; n < static_cast<std::size_t>(got); ++n)
            samples[done + n] = static_cast<float>(o.buffer[n]) / 32768.0F;
        done += static_cast<std::size_t>(got);
    }
}

} // namespace vowelway::io
