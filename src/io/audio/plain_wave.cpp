// SPDX-License-Identifier: MIT
#include "io/audio/audio_reading.hpp"
#include "io/audio/mono_mixer.hpp"
#include "io/audio/sndfile.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <array>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <memory>
#include <span>

namespace vowelway::io {
namespace {

constexpr sf_count_t block_length = 4096; // samples of a channel: what fits near the processor

std::uint32_t little(std::span<unsigned char const> bytes, std::size_t at, int count) {
    std::uint32_t value = 0;
    for (int k = count; k-- > 0;) value = value << 8 | bytes[at + static_cast<std::size_t>(k)];
    return value;
}

/// What the header says (RIFF/WAVE of Microsoft & IBM, 1991, with Microsoft's WAVE_FORMAT_EXTENSIBLE).
struct WaveHeader {
    int rate = 0, channels = 0;
    std::int64_t frames = 0;
};

/// The chunk "fmt ": integers of 8 to 32 bits or floats, one number after the other. False when it is
/// anything else.
bool read_format(std::span<unsigned char const> bytes, WaveHeader& header, std::uint32_t& bytes_of_frame) {
    auto tag = little(bytes, 0, 2);
    auto const bits = little(bytes, 14, 2);
    if (tag == 0xfffe)
        tag = bytes.size() >= 40 ? little(bytes, 24, 2) : 0; // the first field of the subformat
    header.channels = static_cast<int>(little(bytes, 2, 2));
    auto const rate = little(bytes, 4, 4);
    bytes_of_frame = little(bytes, 12, 2);
    bool const known = (tag == 1 && (bits == 8 || bits == 16 || bits == 24 || bits == 32)) ||
                       (tag == 3 && (bits == 32 || bits == 64));
    header.rate = rate <= static_cast<std::uint32_t>(highest_rate) ? static_cast<int>(rate) : 0;
    return known && header.channels > 0 && header.channels <= most_channels && header.rate >= lowest_rate &&
           bytes_of_frame == static_cast<std::uint32_t>(header.channels) * bits / 8;
}

/// Nothing where there is any doubt.
std::optional<WaveHeader> header_of(std::string const& path) {
    std::error_code failed;
    auto const size = std::filesystem::file_size(path, failed);
    std::ifstream file(path, std::ios::binary);
    std::array<unsigned char, 40> bytes{};
    auto const take = [&](std::size_t count) {
        return static_cast<bool>(
            file.read(reinterpret_cast<char*>(bytes.data()), static_cast<std::streamsize>(count)));
    };
    auto const says = [&](std::size_t at, std::string_view what) {
        return std::equal(what.begin(), what.end(), bytes.begin() + static_cast<std::ptrdiff_t>(at));
    };
    if (failed || !take(12) || !says(0, "RIFF") || !says(8, "WAVE")) return std::nullopt;
    WaveHeader header;
    std::uint32_t bytes_of_frame = 0;
    for (std::uintmax_t at = 12; at + 8 <= size;) {
        file.seekg(static_cast<std::streamoff>(at));
        if (!take(8)) return std::nullopt;
        auto const length = little(bytes, 4, 4);
        if (length > size - at - 8) return std::nullopt; // breaks off
        if (says(0, "data")) {
            if (bytes_of_frame == 0 || length == 0 || length % bytes_of_frame != 0) return std::nullopt;
            header.frames = length / bytes_of_frame;
            return header;
        }
        if (says(0, "fmt ")) {
            auto const known = std::min<std::size_t>(length, bytes.size());
            if (bytes_of_frame > 0 || known < 16 || !take(known) ||
                !read_format(std::span(bytes).first(known), header, bytes_of_frame))
                return std::nullopt;
        }
        at += 8 + std::uintmax_t{length} + length % 2;
    }
    return std::nullopt;
}

struct Close {
    void operator()(SNDFILE* file) const { sndfile().sf_close(file); }
};
using OpenWave = std::unique_ptr<SNDFILE, Close>;

/// Nothing when libsndfile is not there, or reads another header than ours.
OpenWave open_wave(std::string const& path, WaveHeader const& header) try {
    SF_INFO info{};
    OpenWave file{sndfile().sf_open(path.c_str(), SFM_READ, &info)};
    bool const alike = file && info.samplerate == header.rate && info.channels == header.channels &&
                       info.frames == header.frames;
    return alike ? std::move(file) : OpenWave{};
} catch (InputError const&) {
    return {};
}

void take_apart(std::vector<float> const& together, Planes& planes, std::size_t count) {
    auto const channels = planes.size();
    for (std::size_t c = 0; c < channels; ++c) {
        planes[c].resize(count);
        for (std::size_t n = 0; n < count; ++n) planes[c][n] = together[n * channels + c];
    }
}

} // namespace

std::optional<AudioFacts> read_plain_wave(std::string const& path, int rate, AudioSink const& sink) {
    auto const header = header_of(path);
    if (!header) return std::nullopt;
    auto const file = open_wave(path, *header);
    if (!file) return std::nullopt;
    auto const channels = static_cast<std::size_t>(header->channels);
    MonoMixer mixer(header->channels, header->rate, rate);
    Planes planes(channels);
    std::vector<float> together;
    bool more = true;
    for (std::int64_t left = header->frames; left > 0 && more;) {
        auto const wanted = std::min<std::int64_t>(left, block_length);
        auto& target = channels == 1 ? planes.front() : together;
        target.resize(static_cast<std::size_t>(wanted) * channels);
        auto const got = sndfile().sf_readf_float(file.get(), target.data(), wanted);
        if (channels > 1)
            take_apart(together, planes, static_cast<std::size_t>(std::max<sf_count_t>(got, 0)));
        auto const before = mixer.length();
        auto const out = got > 0 ? mixer.mix(planes) : std::span<float const>{};
        if (got != wanted || mixer.broken())
            throw InputError(worded("is damaged at {0}", clock_time(before)), record_again());
        more = out.empty() || sink(out);
        require_bounded(mixer, path);
        left -= got;
    }
    if (more)
        if (auto const out = mixer.rest(); !out.empty()) sink(out);
    return facts_of(mixer, "wav / pcm", header->rate, header->channels);
}

} // namespace vowelway::io
