// SPDX-License-Identifier: MIT
// What phones, programs and desks do to a recording, for the programs that measure how it is read. Shares
// nothing with the estimator.
#pragma once

#include "probes.hpp"

#include "analysis/resample.hpp"
#include "vowelway/analysis/measure.hpp"
#include "vowelway/io/audio/read_audio.hpp"

#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace vowelway::probes {

using Processed = std::function<make::Samples(make::Samples)>; // at 16 kHz

/// a0 y[n] = b0 x[n] + b1 x[n-1] + b2 x[n-2] - a1 y[n-1] - a2 y[n-2].
inline make::Samples biquad(make::Samples x, std::array<double, 6> const& c) {
    double x1 = 0, x2 = 0, y1 = 0, y2 = 0;
    for (auto& v : x) {
        double const y = (c[0] * v + c[1] * x1 + c[2] * x2 - c[4] * y1 - c[5] * y2) / c[3];
        x2 = x1, x1 = v, y2 = y1, y1 = y;
        v = y;
    }
    return x;
}

/// Second-order high-pass of this quality (bilinear).
inline make::Samples high_pass(make::Samples x, double corner, double quality) {
    double const w = 2 * make::pi * corner / 16000, a = std::sin(w) / (2 * quality), c = std::cos(w);
    return biquad(std::move(x), {(1 + c) / 2, -(1 + c), (1 + c) / 2, 1 + a, -2 * c, 1 - a});
}

/// A resonance or a dip of the microphone, `db` at `hz`.
inline make::Samples bell(make::Samples x, double hz, double quality, double db) {
    double const w = 2 * make::pi * hz / 16000, a = std::sin(w) / (2 * quality), c = std::cos(w),
                 g = std::pow(10, db / 40);
    return biquad(std::move(x), {1 + a * g, -2 * c, 1 - a * g, 1 + a / g, -2 * c, 1 - a / g});
}

/// The sound a second time, by a delay in the spectrum: it need not be a whole sample.
inline make::Samples reflected(make::Samples x, double delay, double gain) {
    auto const size = x.size();
    x.resize(analysis::fast_length(size + 512));
    auto const length = x.size();
    analysis::RealFft fft;
    auto bins = fft.forward(x);
    for (std::size_t k = 0; k < bins.size(); ++k)
        bins[k] *= 1.0 + gain * std::polar(1.0, -2 * make::pi * 16000 * static_cast<double>(k) /
                                                    static_cast<double>(length) * delay);
    auto const& y = fft.inverse(bins, length);
    return {y.begin(), y.begin() + static_cast<std::ptrdiff_t>(size)};
}

/// The level is followed within `attack` s and let go within `release` s; above `threshold` (of full scale)
/// only 1/ratio of it, in decibels, remains. A ratio of 100 is a limiter.
inline make::Samples gain_control(make::Samples x, double threshold, double ratio, double attack,
                                  double release) {
    double level = 0;
    for (auto& v : x) {
        double const size = std::abs(v), t = size > level ? attack : release;
        level += (size - level) * (1 - std::exp(-1 / (16000 * t)));
        if (level > threshold) v *= std::pow(level / threshold, 1 / ratio - 1);
    }
    return x;
}

/// The recording so loud that its highest sample is `times` full scale.
inline make::Samples at_level(make::Samples x, double times) {
    double most = 1e-12;
    for (double v : x) most = std::max(most, std::abs(v));
    for (auto& v : x) v *= times / most;
    return x;
}

/// Spectral subtraction: frames of 32 ms, bins that do not rise above the noise of the first half second are
/// let through at `floor_db`.
inline make::Samples suppressed(make::Samples x, double over, double floor_db) {
    constexpr std::size_t frame = 512, hop = 128;
    analysis::RealFft fft;
    std::vector<double> noise(frame / 2 + 1, 0.0), window(frame), part(frame);
    for (std::size_t n = 0; n < frame; ++n)
        window[n] = 0.5 - 0.5 * std::cos(2 * make::pi * static_cast<double>(n) / frame);
    make::Samples y(x.size(), 0.0);
    for (int pass = 0; pass < 2; ++pass)
        for (std::size_t from = 0; from + frame <= (pass == 0 ? 8000 : x.size()); from += hop) {
            for (std::size_t n = 0; n < frame; ++n) part[n] = x[from + n] * window[n];
            auto bins = fft.forward(part);
            for (std::size_t k = 0; k < bins.size(); ++k) {
                double const power = std::norm(bins[k]);
                if (pass == 0)
                    noise[k] += power * hop / 7600;
                else
                    bins[k] *= std::max(std::sqrt(std::max(0.0, 1 - over * noise[k] / (power + 1e-20))),
                                        std::pow(10, floor_db / 20));
            }
            if (pass == 0) continue;
            auto const& back = fft.inverse(bins, frame);
            for (std::size_t n = 0; n < frame; ++n) y[from + n] += back[n] * window[n] / 1.5;
        }
    return y;
}

/// In every second pause of the recording a breath (a quarter second of soft noise, as loud as a tenth of the
/// takes), in the others a bump against the phone: a thump of 90 Hz as loud as the takes.
inline make::Samples breathed_and_bumped(make::Samples x) {
    std::mt19937 random{3};
    constexpr std::size_t step = 800, pause = 8 * step, breath = 5 * step;
    double const mean = make::power(x);
    std::size_t quiet = 0, count = 0;
    for (std::size_t from = 0; from + step <= x.size(); from += step) {
        quiet = make::power(std::span(x).subspan(from, step)) < 0.02 * mean ? quiet + step : 0;
        if (quiet < pause) continue;
        quiet = 0;
        auto const begin = from + step - pause + step;
        auto const soft = make::white(breath, random);
        for (std::size_t n = 0; n < breath; ++n) {
            double const t = static_cast<double>(n) / 16000;
            x[begin + n] += std::sqrt(mean) *
                            (count % 2 == 0 ? 0.3 * std::sin(make::pi * t / 0.25) * soft[n]
                                            : 2 * std::exp(-t / 0.02) * std::sin(2 * make::pi * 90 * t));
        }
        ++count;
    }
    return x;
}

/// One condition: what is done to the sound, then the file it is saved in ("" none; the ffmpeg program makes
/// the others).
struct Condition {
    std::string name;
    Processed process;
    std::string ending, options;
};

inline std::vector<Condition> conditions() {
    auto const same = [](make::Samples x) { return x; };
    auto const agc = [](make::Samples x) {
        return gain_control(at_level(std::move(x), 1), 0.05, 8, 0.001, 0.04);
    };
    return {
        {"as it is", same, "", ""},
        {"AAC 64 kb/s", same, "m4a", "-b:a 64k"},
        {"MP3 64 kb/s", same, "mp3", "-b:a 64k"},
        {"Opus 24 kb/s", same, "opus", "-b:a 24k -ar 48000"},
        {"microphone: +4 dB at 6 kHz, 80 Hz",
         [](make::Samples x) { return bell(high_pass(std::move(x), 80, 0.707), 6000, 1.5, 4); }, "", ""},
        {"microphone: -3 dB at 1.5 kHz, +6 at 3.5",
         [](make::Samples x) { return bell(bell(std::move(x), 1500, 0.7, -3), 3500, 1, 6); }, "", ""},
        {"low cut 150 Hz, order 2", [](make::Samples x) { return high_pass(std::move(x), 150, 0.707); }, "",
         ""},
        {"low cut 300 Hz, order 2", [](make::Samples x) { return high_pass(std::move(x), 300, 0.707); }, "",
         ""},
        {"low cut 300 Hz, order 4",
         [](make::Samples x) { return high_pass(high_pass(std::move(x), 300, 0.541), 300, 1.307); }, "", ""},
        {"fast gain control 8:1, 1 and 40 ms", agc, "", ""},
        {"limiter 18 dB over, 1 and 15 ms",
         [](make::Samples x) { return gain_control(at_level(std::move(x), 4), 0.5, 100, 0.0005, 0.015); }, "",
         ""},
        {"noise suppression", [](make::Samples x) { return suppressed(std::move(x), 2, -20); }, "", ""},
        {"suppression, gain control, Opus",
         [agc](make::Samples x) { return agc(suppressed(std::move(x), 2, -20)); }, "opus",
         "-b:a 24k -ar 48000"},
        {"breaths and bumps in the pauses", breathed_and_bumped, "", ""},
        {"desk: 0.9 ms, 0.33", [](make::Samples x) { return reflected(std::move(x), 0.0009, 0.33); }, "", ""},
        {"desk: 1.4 ms, 0.25", [](make::Samples x) { return reflected(std::move(x), 0.00137, 0.25); }, "",
         ""},
        {"desk: 0.6 ms, 0.4", [](make::Samples x) { return reflected(std::move(x), 0.00061, 0.4); }, "", ""},
    };
}

/// The recording as it is heard after all this; nothing without the ffmpeg program.
inline std::optional<analysis::Recording> through(Condition const& c, make::Samples const& sound) {
    analysis::Recording r;
    r.name = "take.wav";
    auto const processed = make::scaled(c.process(sound));
    if (c.ending.empty()) {
        r.heard = listened(processed);
        return r;
    }
    auto const start = std::filesystem::temp_directory_path() / ("vowelway_" + std::to_string(getpid()));
    auto const plain = start.string() + ".wav", made = start.string() + "_made." + c.ending;
    write_wav(plain, processed, 16000);
    bool const done =
        std::system(
            ("ffmpeg -nostdin -loglevel quiet -y -i " + plain + " " + c.options + " " + made).c_str()) == 0;
    if (done) {
        analysis::Listener listener(analysis::measuring_rate);
        io::read_audio(made, analysis::measuring_rate,
                       [&](std::span<float const> s) { return listener.hear(s); });
        r.heard = listener.finish();
    }
    std::filesystem::remove(plain), std::filesystem::remove(made);
    return done ? std::optional(r) : std::nullopt;
}

} // namespace vowelway::probes
