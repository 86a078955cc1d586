// SPDX-License-Identifier: MIT
// Probes for the programs that measure how well and how fast resonances are found.
#pragma once

#include "analysis/fft.hpp"
#include "support/probe_synthesis.hpp"
#include "vowelway/analysis/formants.hpp"
#include "vowelway/analysis/listen.hpp"

#include <array>
#include <cstdint>
#include <fstream>
#include <random>
#include <span>
#include <string>
#include <vector>

namespace vowelway::probes {

namespace make = probe_synthesis;

/// What excites the tract. `rate_hz`: pulses of a creak, or the pitch.
struct Source {
    analysis::ProbeKind kind = analysis::ProbeKind::whisper;
    double rate_hz = 40;
    double slope = 0;                 ///< of a whisper's noise
    double open = 0.6, corner = 2500; ///< of a sung probe's glottis
    double vibrato = 0;               ///< semitones
};

inline make::Samples excite(Source const& s, std::size_t n, double rate, std::mt19937& random) {
    if (s.kind == analysis::ProbeKind::whisper) return make::sloped(make::white(n, random), s.slope);
    if (s.kind == analysis::ProbeKind::creak) return make::creak_source(n, rate, s.rate_hz, random);
    return make::voiced_source(n, rate, s.rate_hz, s.open, s.corner, 0.005, s.vibrato, random);
}

/// 16 bits, mono.
inline void write_wav(std::string const& path, std::span<float const> samples, std::uint32_t rate) {
    std::ofstream file(path, std::ios::binary);
    auto const put = [&](std::uint32_t value, int bytes) {
        for (int k = 0; k < bytes; ++k) file.put(static_cast<char>(value >> (8 * k)));
    };
    auto const size = static_cast<std::uint32_t>(2 * samples.size());
    file << "RIFF", put(36 + size, 4), file << "WAVEfmt ", put(16, 4), put(1, 2), put(1, 2), put(rate, 4),
        put(2 * rate, 4);
    put(2, 2), put(16, 2), file << "data", put(size, 4);
    for (float x : samples) put(static_cast<std::uint16_t>(static_cast<std::int16_t>(32767 * x)), 2);
}

/// The sound and, from 3 ms on, a diffuse field that falls by 60 dB in `t60` s; its energy `direct_db` below
/// the direct sound's.
inline make::Samples in_room(make::Samples x, double rate, double t60, double direct_db,
                             std::mt19937& random) {
    auto const size = x.size();
    make::Samples tail = make::white(static_cast<std::size_t>(1.2 * t60 * rate), random);
    double energy = 0;
    for (std::size_t n = 0; n < tail.size(); ++n) {
        double const t = static_cast<double>(n) / rate;
        tail[n] *= t < 0.003 ? 0 : std::exp(-std::log(1e3) * t / t60);
        energy += tail[n] * tail[n];
    }
    for (auto& v : tail) v *= std::sqrt(std::pow(10, -direct_db / 10) / energy);
    tail[0] = 1;
    auto const length = analysis::fast_length(size + tail.size());
    x.resize(length), tail.resize(length);
    analysis::RealFft fft;
    auto bins = fft.forward(x);
    auto const& of_room = fft.forward(tail);
    for (std::size_t k = 0; k < bins.size(); ++k) bins[k] *= of_room[k];
    auto const& y = fft.inverse(bins, length);
    return {y.begin(), y.begin() + static_cast<std::ptrdiff_t>(size)};
}

/// A recording at 16 kHz as the listener hears it.
inline analysis::Heard listened(std::span<float const> samples) {
    analysis::Listener listener(hertz(16000));
    listener.hear(samples);
    return listener.finish();
}

} // namespace vowelway::probes
