// SPDX-License-Identifier: MIT
// What is written is read back, by the project's reader, which is another library.
#include "support/scratch_folder.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/io/audio/midi.hpp"
#include "vowelway/io/audio/read_audio.hpp"
#include "vowelway/io/audio/write_audio.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace vowelway;
using namespace vowelway::io;
using test::bytes_of;
using test::ScratchFolder;

namespace {

void ramp(AudioFeed const& feed) {
    std::vector<float> block(1000);
    for (int b = 0; b < 48; ++b) {
        for (std::size_t i = 0; i < block.size(); ++i)
            block[i] = 0.5F * static_cast<float>(std::sin(0.05 * (b * 1000.0 + static_cast<double>(i))));
        feed(block);
    }
}

} // namespace

TEST_CASE("WAV and FLAC hold the samples, within half a step of 16 bits, twice the same bytes") {
    ScratchFolder const folder;
    for (auto const* ending : {".wav", ".flac"}) {
        CAPTURE(ending);
        auto const path = folder.path() / (std::string("tone") + ending);
        write_audio(path, *audio_form(ending), hertz(48000), ramp);
        auto const first = bytes_of(path);
        CHECK(first == audio_bytes(*audio_form(ending), hertz(48000), ramp));
        std::vector<float> got;
        auto const facts = read_audio(path.string(), hertz(48000), [&](std::span<float const> x) {
            got.insert(got.end(), x.begin(), x.end());
            return true;
        });
        CHECK(in_hertz(facts.rate) == 48000);
        CHECK(facts.channels == 1);
        CHECK_FALSE(facts.lossy);
        REQUIRE(got.size() == 48000);
        double worst = 0;
        for (std::size_t i = 0; i < got.size(); ++i)
            worst = std::max(worst, std::abs(got[i] - 0.5 * std::sin(0.05 * static_cast<double>(i))));
        CHECK(worst < 1.0 / 32768);
    }
    CHECK_FALSE(audio_form(".mp3"));
}

TEST_CASE("where nothing can be written, it is said, and no half file is left") {
    CHECK_THROWS_AS(write_audio("/dev/full/x.wav", AudioForm::wav, hertz(48000), ramp), InputError);
    ScratchFolder const folder;
    auto const path = folder.path() / "broken.flac";
    CHECK_THROWS_AS(write_audio(path, AudioForm::flac, hertz(48000),
                                [](AudioFeed const&) { throw InputError("stopped", "go on"); }),
                    InputError);
    CHECK(std::filesystem::is_empty(folder.path()));
}

// Standard MIDI Files 1.0: header chunk, delta times of seven bits, tempo in microseconds a quarter note.
TEST_CASE("a line of two notes is the bytes that the standard says") {
    std::vector<GuideNote> const notes{{Pitch(hertz(440)), seconds(0), seconds(0.5), "la"},
                                       {Pitch(hertz(880)), seconds(1), seconds(0.5), ""}};
    std::string const expected("MThd\0\0\0\6\0\0\0\1\1\xe0MTrk\0\0\0\x24"
                               "\0\xff\x51\3\x07\xa1\x20" // 500000 µs
                               "\0\xff\x05\2la"
                               "\0\x90\x45\x50"
                               "\x83\x60\x80\x45\0"
                               "\x83\x60\x90\x51\x50"
                               "\x83\x60\x80\x51\0"
                               "\0\xff\x2f\0",
                               58);
    CHECK(midi_file("", notes, seconds(0.5)) == expected);
}

TEST_CASE("a pitch between two keys is bent, and bent back") {
    std::vector<GuideNote> const notes{{Pitch(hertz(440)) + Cents{50}, seconds(0), seconds(1), ""},
                                       {Pitch(hertz(440)), seconds(1), seconds(1), ""}};
    auto const got = midi_file("", notes, seconds(1));
    // Half a semitone is a quarter of the range of two: 8192 +- 2048, seven bits at a time.
    CHECK((got.find(std::string("\xe0\0\x50", 3)) != got.npos ||
           got.find(std::string("\xe0\0\x30", 3)) != got.npos));
    CHECK(got.find(std::string("\xe0\0\x40", 3)) != got.npos);
}
