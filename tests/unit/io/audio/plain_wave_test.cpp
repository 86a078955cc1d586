// SPDX-License-Identifier: MIT
// WAV of plain samples by libsndfile, against what FFmpeg reads from the same bytes.
#include "io/audio/audio_reading.hpp"
#include "support/scratch_folder.hpp"

#include "vowelway/core/error.hpp"

#include <doctest/doctest.h>

#include <bit>
#include <cmath>
#include <cstdint>
#include <random>
#include <string>
#include <vector>

using namespace vowelway;
using namespace vowelway::io;

namespace {

std::string bytes_of(std::uint64_t value, int count) {
    std::string text;
    for (int k = 0; k < count; ++k) text += static_cast<char>(value >> (8 * k));
    return text;
}

/// A WAV as Microsoft & IBM (1991) and Microsoft's WAVE_FORMAT_EXTENSIBLE lay it out.
struct Layout {
    std::uint32_t tag = 1, channels = 1, bits = 16, rate = 44100;
    bool extensible = false;
    std::string before = {}; ///< chunks before the samples
};

std::string sample_of(double x, Layout const& l) {
    if (l.tag == 3 && l.bits == 32) return bytes_of(std::bit_cast<std::uint32_t>(static_cast<float>(x)), 4);
    if (l.tag == 3) return bytes_of(std::bit_cast<std::uint64_t>(x), 8);
    auto const top = std::ldexp(1.0, static_cast<int>(l.bits) - 1);
    auto const value = static_cast<std::int64_t>(std::floor(x * (top - 1)));
    return bytes_of(static_cast<std::uint64_t>(l.bits == 8 ? value + 128 : value),
                    static_cast<int>(l.bits / 8));
}

std::string wave_of(Layout const& l, std::size_t frames = 5000) {
    auto const align = l.channels * l.bits / 8;
    std::string format = bytes_of(l.extensible ? 0xfffe : l.tag, 2) + bytes_of(l.channels, 2) +
                         bytes_of(l.rate, 4) + bytes_of(std::uint64_t{l.rate} * align, 4) +
                         bytes_of(align, 2) + bytes_of(l.bits, 2);
    if (l.extensible) // valid bits, no speakers named, and Microsoft's GUID of the tag
        format += bytes_of(22, 2) + bytes_of(l.bits, 2) + bytes_of(0, 4) + bytes_of(l.tag, 4) +
                  std::string("\x00\x00\x10\x00\x80\x00\x00\xaa\x00\x38\x9b\x71", 12);
    std::string data;
    for (std::size_t n = 0; n < frames; ++n)
        for (std::size_t c = 0; c < l.channels; ++c)
            data += sample_of(0.6 * std::sin(0.05 * static_cast<double>(n) * static_cast<double>(c + 1)), l);
    std::string const body = "WAVEfmt " + bytes_of(format.size(), 4) + format + l.before + "data" +
                             bytes_of(data.size(), 4) + data;
    return "RIFF" + bytes_of(body.size(), 4) + body;
}

/// The name of a file with these bytes, gone with the folder.
std::string stored(vowelway::test::ScratchFolder const& folder, std::string const& bytes) {
    return folder.put("take.wav", bytes).string();
}

struct Got {
    std::optional<AudioFacts> facts;
    std::vector<float> samples;
};
Got plainly(std::string const& path) {
    Got g;
    g.facts = read_plain_wave(path, 16000, [&](std::span<float const> s) {
        g.samples.insert(g.samples.end(), s.begin(), s.end());
        return true;
    });
    return g;
}
Got by_ffmpeg(std::string const& path) {
    Got g;
    g.facts = read_with_ffmpeg(path, 16000, [&](std::span<float const> s) {
        g.samples.insert(g.samples.end(), s.begin(), s.end());
        return true;
    });
    return g;
}

std::string replaced(std::string text, std::size_t at, std::string const& by) {
    return text.replace(at, by.size(), by);
}

} // namespace

TEST_CASE("integers and floats of any width, with one channel or two, are read as FFmpeg reads them") {
    for (std::uint32_t const bits : {8U, 16U, 24U, 32U, 33U, 64U}) // 33: floats of 32
        for (std::uint32_t const channels : {1U, 2U})
            for (bool const extensible : {false, true}) {
                Layout layout{.tag = bits > 32 ? 3U : 1U,
                              .channels = channels,
                              .bits = bits == 33 ? 32U : bits,
                              .rate = 44100,
                              .extensible = extensible};
                CAPTURE(bits);
                CAPTURE(channels);
                vowelway::test::ScratchFolder const folder;
                auto const file = stored(folder, wave_of(layout));
                auto const ours = plainly(file), theirs = by_ffmpeg(file);
                REQUIRE(ours.facts);
                CHECK(ours.facts->rate == theirs.facts->rate);
                CHECK(ours.facts->channels == theirs.facts->channels);
                CHECK(ours.facts->length == theirs.facts->length);
                CHECK(ours.facts->peak == doctest::Approx(theirs.facts->peak).epsilon(1e-6));
                CHECK(!ours.facts->lossy);
                REQUIRE(ours.samples.size() == theirs.samples.size());
                double most = 0;
                for (std::size_t n = 0; n < ours.samples.size(); ++n)
                    most = std::max(most, std::abs(static_cast<double>(ours.samples[n] - theirs.samples[n])));
                CHECK(most < 1e-6);
            }
}

TEST_CASE("other chunks are passed over, those of an odd length with their byte more") {
    Layout layout;
    layout.before =
        "LIST" + bytes_of(5, 4) + std::string("INFOx") + std::string(1, '\0') + "junk" + bytes_of(0, 4);
    vowelway::test::ScratchFolder const folder;
    auto const ours = plainly(stored(folder, wave_of(layout)));
    REQUIRE(ours.facts);
    CHECK(in_seconds(ours.facts->length) == doctest::Approx(5000.0 / 44100));
}

TEST_CASE("where the header leaves any doubt the file is left to FFmpeg") {
    auto const whole = wave_of({});
    vowelway::test::ScratchFolder const folder;
    auto const doubted = [&](std::string const& bytes) { return !plainly(stored(folder, bytes)).facts; };
    CHECK(!doubted(whole));
    CHECK(doubted(""));
    CHECK(doubted(whole.substr(0, 30)));
    CHECK(doubted(whole.substr(0, whole.size() - 2)));            // breaks off
    CHECK(doubted(replaced(whole, 0, "RIFX")));                   // the other order of bytes
    CHECK(doubted(replaced(whole, 20, bytes_of(2, 2))));          // ADPCM
    CHECK(doubted(replaced(whole, 22, bytes_of(0, 2))));          // no channel
    CHECK(doubted(replaced(whole, 24, bytes_of(6000, 4))));       // too slow
    CHECK(doubted(replaced(whole, 24, bytes_of(0x7fffffff, 4)))); // too fast
    CHECK(doubted(replaced(whole, 32, bytes_of(3, 2))));          // a frame of 3 bytes
    CHECK(doubted(replaced(whole, 40, bytes_of(0xffffffff, 4)))); // a length not yet known
    CHECK(doubted(replaced(whole, 40, bytes_of(0, 4))));
    CHECK(doubted(replaced(whole, 12, "fmx "))); // samples of an unknown form
    Layout twice;
    twice.before = whole.substr(12, 24);
    CHECK(doubted(wave_of(twice)));
}

TEST_CASE("any header is read or refused") {
    std::mt19937 random(5);
    auto const whole = wave_of({.channels = 2, .bits = 24, .extensible = true}, 300);
    vowelway::test::ScratchFolder const folder;
    int read = 0, refused = 0;
    for (int k = 0; k < 400; ++k) {
        auto bytes = whole;
        for (int m = 0; m < 1 + k % 3; ++m) bytes[random() % 80] = static_cast<char>(k % 2 ? random() : 0xff);
        auto const file = stored(folder, bytes);
        try {
            read_audio(file, hertz(16000), [](std::span<float const>) { return true; });
            ++read;
        } catch (InputError const&) {
            ++refused;
        }
    }
    CHECK(read > 0);
    CHECK(refused > 0);
}
