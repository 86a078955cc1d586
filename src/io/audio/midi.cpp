// SPDX-License-Identifier: MIT
#include "vowelway/io/audio/midi.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <stdexcept>

namespace vowelway::io {

namespace {

constexpr double ticks_in_quarter = 480;
constexpr int velocity = 80, no_bend = 8192, bend_range_semitones = 2;

class Track {
  public:
    /// Time first, as the distance from the event before.
    void at(std::uint32_t tick) {
        variable(tick - std::min(tick, now_));
        now_ = std::max(now_, tick);
    }
    void bytes(std::initializer_list<unsigned> values) {
        for (unsigned v : values) data += static_cast<char>(v);
    }
    void text(unsigned kind, std::string_view words) {
        bytes({0xff, kind});
        variable(static_cast<std::uint32_t>(words.size()));
        data += words;
    }
    std::string data;

  private:
    void variable(std::uint32_t value) { // seven bits a byte, the highest bit on all but the last
        unsigned shift = 28;
        while (shift > 0 && (value >> shift) == 0) shift -= 7;
        for (; shift > 0; shift -= 7) data += static_cast<char>(0x80U | (value >> shift & 0x7fU));
        data += static_cast<char>(value & 0x7fU);
    }
    std::uint32_t now_ = 0;
};

std::string big_endian(std::uint32_t value, int size) {
    std::string out;
    for (int i = size - 1; i >= 0; --i) out += static_cast<char>(value >> (8 * i) & 0xffU);
    return out;
}

} // namespace

std::string midi_file(std::string_view title, std::span<GuideNote const> notes, Duration quarter) {
    if (!(quarter >= seconds(0.001) && quarter <= seconds(16)))
        throw std::invalid_argument("midi_file: a quarter note of this length");
    Track track;
    if (!title.empty()) {
        track.at(0);
        track.text(0x03, title);
    }
    auto const micro = static_cast<std::uint32_t>(std::lround(in_seconds(quarter) * 1e6));
    track.at(0);
    track.bytes({0xff, 0x51, 3, micro >> 16 & 0xffU, micro >> 8 & 0xffU, micro & 0xffU});
    int bent = no_bend;
    for (auto const& note : notes) {
        double const exact = 69 + in_semitones(note.pitch - Pitch(hertz(440)));
        double const key = std::round(exact);
        if (key < 0 || key > 127) continue;
        auto const tick = [&](Duration t) {
            return static_cast<std::uint32_t>(
                std::lround(std::max(in_seconds(t) / in_seconds(quarter), 0.0) * ticks_in_quarter));
        };
        auto const begins = tick(note.start), ends = std::max(tick(note.start + note.length), begins + 1);
        double const off = std::abs(exact - key) > 0.01 ? exact - key : 0;
        int const bend = no_bend + static_cast<int>(std::lround(off / bend_range_semitones * no_bend));
        if (bend != bent) {
            track.at(begins);
            track.bytes(
                {0xe0, static_cast<unsigned>(bend) & 0x7fU, static_cast<unsigned>(bend) >> 7U & 0x7fU});
            bent = bend;
        }
        if (!note.words.empty()) {
            track.at(begins);
            track.text(0x05, note.words);
        }
        track.at(begins);
        track.bytes({0x90, static_cast<unsigned>(key), velocity});
        track.at(ends);
        track.bytes({0x80, static_cast<unsigned>(key), 0});
    }
    track.bytes({0, 0xff, 0x2f, 0});
    return "MThd" + big_endian(6, 4) + big_endian(0, 2) + big_endian(1, 2) +
           big_endian(static_cast<std::uint32_t>(ticks_in_quarter), 2) + "MTrk" +
           big_endian(static_cast<std::uint32_t>(track.data.size()), 4) + track.data;
}

} // namespace vowelway::io
