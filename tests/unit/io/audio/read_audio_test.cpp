// SPDX-License-Identifier: MIT
#include "support/source_dir.hpp"
#include "vowelway/io/audio/read_audio.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/io/audio/read_cues.hpp"

#include <doctest/doctest.h>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <span>
#include <string>
#include <vector>

using namespace vowelway;
using namespace vowelway::io;

namespace {

std::string data(std::string const& name) {
    return vowelway::test::source_dir() + "/tests/data/measuring/" + name;
}

/// A file that goes away with the test.
class Temporary {
  public:
    explicit Temporary(std::string const& bytes, std::string const& ending = ".wav")
        : path_(std::filesystem::temp_directory_path() /
                ("vowelway_audio_" + std::to_string(::getpid()) + ending)) {
        std::ofstream(path_, std::ios::binary) << bytes;
    }
    ~Temporary() {
        std::error_code none;
        std::filesystem::remove(path_, none);
    }
    std::string name() const { return path_.string(); }

  private:
    std::filesystem::path path_;
};

std::string number(std::uint32_t value, int bytes) {
    std::string text;
    for (int k = 0; k < bytes; ++k) text += static_cast<char>(value >> (8 * k));
    return text;
}

/// 16-bit mono WAV (the RIFF/WAVE layout of Microsoft & IBM, 1991); `announced` frames in the header.
std::string wav(std::vector<std::int16_t> const& samples, std::uint32_t rate, std::uint32_t announced = 0) {
    std::uint32_t const size = 2 * (announced ? announced : static_cast<std::uint32_t>(samples.size()));
    std::string text = "RIFF" + number(36 + size, 4) + "WAVEfmt " + number(16, 4) + number(1, 2) +
                       number(1, 2) + number(rate, 4) + number(2 * rate, 4) + number(2, 2) + number(16, 2) +
                       "data" + number(size, 4);
    for (auto s : samples) text += number(static_cast<std::uint16_t>(s), 2);
    return text;
}

std::vector<std::int16_t> tone(double hz, std::uint32_t rate, double seconds, double size) {
    std::vector<std::int16_t> x(static_cast<std::size_t>(seconds * rate));
    for (std::size_t n = 0; n < x.size(); ++n)
        x[n] = static_cast<std::int16_t>(
            std::clamp(size * std::sin(2 * 3.14159265358979 * hz * static_cast<double>(n) / rate), -1.0,
                       1.0) *
            32767);
    return x;
}

struct Read {
    AudioFacts facts;
    std::vector<float> samples;
};
Read read(std::string const& path) {
    Read r;
    r.facts = read_audio(path, hertz(16000), [&](std::span<float const> s) {
        r.samples.insert(r.samples.end(), s.begin(), s.end());
        return true;
    });
    return r;
}

/// Pitch by counting upward crossings of zero in the middle of the sound.
double pitch_of(std::vector<float> const& x) {
    std::size_t first = 0, last = 0;
    int count = -1;
    for (std::size_t n = x.size() / 5; n + 1 < x.size() * 4 / 5; ++n)
        if (x[n] < 0 && x[n + 1] >= 0) {
            if (count < 0) first = n;
            last = n;
            ++count;
        }
    return 16000.0 * count / static_cast<double>(last - first);
}

std::string error_of(std::string const& path) {
    try {
        read(path);
    } catch (InputError const& error) {
        return error.what();
    }
    return "";
}

} // namespace

TEST_CASE("every form a phone or recorder makes gives the same 440 Hz for half a second") {
    for (auto const* name :
         {"tone.wav", "tone.flac", "tone.mp3", "tone.ogg", "tone.m4a", "tone.webm", "tone.mp4"}) {
        auto const r = read(data(name));
        CAPTURE(name);
        CHECK(pitch_of(r.samples) == doctest::Approx(440).epsilon(0.005));
        CHECK(static_cast<double>(r.samples.size()) ==
              doctest::Approx(8000).epsilon(0.12)); // coders add a frame
        CHECK(r.facts.clipped.empty());
        CHECK(r.facts.lossy == (std::string(name) != "tone.wav" && std::string(name) != "tone.flac"));
        CHECK(!r.facts.format.empty());
    }
}

TEST_CASE("a sine keeps its size and its pitch through resampling from any rate") {
    for (std::uint32_t rate : {8000U, 11025U, 16000U, 22050U, 44100U, 48000U, 96000U}) {
        Temporary const file(wav(tone(1000, rate, 1.0, 0.5), rate));
        auto const r = read(file.name());
        CAPTURE(rate);
        CHECK(in_hertz(r.facts.rate) == rate);
        CHECK(in_seconds(r.facts.length) == doctest::Approx(1.0));
        CHECK(pitch_of(r.samples) == doctest::Approx(1000).epsilon(0.001));
        double energy = 0;
        for (std::size_t n = 4000; n < 12000; ++n)
            energy += static_cast<double>(r.samples[n]) * static_cast<double>(r.samples[n]) / 8000;
        CHECK(std::sqrt(2 * energy) ==
              doctest::Approx(0.5).epsilon(0.01)); // mean square of a sine is half its size squared
    }
}

TEST_CASE("clipping is found where it is") {
    auto x = tone(200, 44100, 1.0, 0.5);
    auto const loud = tone(200, 44100, 0.2, 3.0);
    std::copy(loud.begin(), loud.end(), x.begin() + 22050);
    Temporary const file(wav(x, 44100));
    auto const facts = read(file.name()).facts;
    REQUIRE(facts.clipped.size() == 1);
    CHECK(in_seconds(facts.clipped[0].start) == doctest::Approx(0.5).epsilon(0.01));
    CHECK(in_seconds(facts.clipped[0].end) == doctest::Approx(0.7).epsilon(0.01));
    CHECK(facts.peak > 0.99);
}

TEST_CASE("files that are none, hold nothing or break off are told with time and remedy") {
    CHECK(error_of(data("nothing_here.wav")).find("there is no such file") != std::string::npos);
    CHECK(error_of(data("")).find("is a folder") != std::string::npos);
    CHECK(error_of(data("MANIFEST.md")).find("is not a recording that can be read") != std::string::npos);
    Temporary const nothing("");
    CHECK(error_of(nothing.name()).find("is not a recording") != std::string::npos);

    Temporary const empty(wav({}, 44100));
    CHECK(error_of(empty.name()) != "");
    Temporary const slow(wav(tone(200, 6000, 1, 0.5), 6000));
    CHECK(error_of(slow.name()).find("sampled at only 6000 Hz") != std::string::npos);

    // what the header claims is bounded before anything is converted
    for (std::uint32_t const rate : {1'000'000U, 100'000'000U, 2'147'483'647U}) {
        Temporary const absurd(wav(tone(200, 48000, 1, 0.5), rate));
        CHECK(error_of(absurd.name()).find("at most 768000 are read") != std::string::npos);
    }
    auto many = wav(tone(200, 48000, 1, 0.5), 48000);
    many.replace(22, 2, number(64, 2));  // channels
    many.replace(32, 2, number(128, 2)); // bytes a frame
    Temporary const channels(many);
    CHECK(error_of(channels.name()).find("has 64 channels; at most 32 are read") != std::string::npos);

    // a WAV of floats in which one is no number (format 3; bits of a quiet NaN)
    std::string floats = "RIFF" + number(36 + 32000, 4) + "WAVEfmt " + number(16, 4) + number(3, 2) +
                         number(1, 2) + number(16000, 4) + number(64000, 4) + number(4, 2) + number(32, 2) +
                         "data" + number(32000, 4);
    for (int n = 0; n < 8000; ++n) floats += number(n == 7000 ? 0x7fc00000U : 0x3c000000U, 4);
    Temporary const no_number(floats, "_n.wav");
    CHECK(error_of(no_number.name()).find("is damaged at 0:00") != std::string::npos);

    // the second half of a coded file is missing, or its middle is overwritten
    std::ifstream in(data("whisper_e_a_o.m4a"), std::ios::binary);
    std::string const whole{std::istreambuf_iterator<char>(in), {}};
    Temporary const cut(whole.substr(0, whole.size() / 2), ".m4a");
    CHECK(error_of(cut.name()) != "");
    auto holed = whole;
    for (std::size_t k = holed.size() / 3; k < holed.size() / 3 + 3000; ++k)
        holed[k] = static_cast<char>(k * 37);
    Temporary const broken(holed, "_b.m4a");
    auto const text = error_of(broken.name());
    CHECK(text.find("is damaged at 0:0") != std::string::npos);
    CHECK(text.find("record or copy it again") != std::string::npos);
}

TEST_CASE("no name opens anything but a local file") {
    CHECK(error_of("http://localhost:9/x.wav").find("no such file") != std::string::npos);
    CHECK(error_of("concat:a.wav|b.wav").find("no such file") != std::string::npos);
    Temporary const list(
        "#EXTM3U\n#EXT-X-TARGETDURATION:1\n#EXTINF:1,\n" + data("tone.wav") + "\n#EXT-X-ENDLIST\n", ".m3u8");
    CHECK(error_of(list.name()).find("is not a recording") != std::string::npos);
}

TEST_CASE("the sink may stop the reading") {
    std::size_t got = 0;
    read_audio(data("tone.wav"), hertz(16000), [&](std::span<float const> s) {
        got += s.size();
        return false;
    });
    CHECK(got > 0);
    CHECK(got < 8000);
}

TEST_CASE("moments are written as a player shows them") {
    CHECK(clock_time(seconds(3.21)) == "0:03.2");
    CHECK(clock_time(seconds(59.96)) == "1:00.0");
    CHECK(clock_time(seconds(3723.4)) == "1:02:03.4");
}

TEST_CASE("cues: start, end, vowel, one a line") {
    auto const cues =
        parse_cues("# my take\n0.5 1.5 e\n0:02.0, 0:03.5, a  # open\n\n1:00\t1:01\tE\n", "c.txt");
    REQUIRE(cues.size() == 3);
    CHECK(in_seconds(cues[1].span.start) == doctest::Approx(2.0));
    CHECK(in_seconds(cues[2].span.end) == doctest::Approx(61));
    CHECK(cues[2].vowel.ipa() == "ɛ");
    auto const wrong = [](std::string const& text) {
        try {
            parse_cues(text, "c.txt");
        } catch (InputError const& error) {
            return std::string(error.what());
        }
        return std::string();
    };
    CHECK(wrong("0 1 a\n2 1 e").find("c.txt:2: the cue ends before it begins") != std::string::npos);
    CHECK(wrong("0 2 a\n1 3 e").find("c.txt:2") != std::string::npos);
    CHECK(wrong("0 x a").find("is not a time") != std::string::npos);
    CHECK(wrong("0 1").find("a cue with 2 words") != std::string::npos);
    CHECK(wrong("0 1 q").find("c.txt:1") != std::string::npos);
    CHECK(wrong("# nothing").find("has no cues") != std::string::npos);
}
