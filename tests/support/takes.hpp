// SPDX-License-Identifier: MIT
// Whole recordings of takes of one speaker, as a phone hears them: pauses of half a second, noise of the
// room.
#pragma once

#include "support/probe_synthesis.hpp"
#include "vowelway/analysis/measure.hpp"

#include <array>
#include <string>
#include <utility>
#include <vector>

namespace takes {

namespace make = probe_synthesis;
using vowelway::analysis::ProbeKind;

struct Said {
    std::string vowel;
    std::array<double, 3> formants;
};
/// Men's means of Peterson & Barney (1952), J. Acoust. Soc. Am. 24, 175.
inline std::vector<Said> const men{{"i", {270, 2290, 3010}},
                                   {"ɛ", {530, 1840, 2480}},
                                   {"ɑ", {730, 1090, 2440}},
                                   {"ɔ", {570, 840, 2410}},
                                   {"u", {300, 870, 2240}}};

inline vowelway::Singer average_man() {
    vowelway::Singer s;
    s.name = "Average man";
    s.voice = vowelway::VoiceType::baritone;
    s.average = true;
    s.tract_length = vowelway::centimetres(16.9);
    for (auto const& m : men) {
        vowelway::VowelResonances v;
        v.vowel = vowelway::parse_vowel(m.vowel);
        v.r1 = {vowelway::hertz(m.formants[0]), vowelway::hertz(0.09 * m.formants[0]), false, {}};
        v.r2 = {vowelway::hertz(m.formants[1]), vowelway::hertz(0.08 * m.formants[1]), false, {}};
        v.r3 = vowelway::Resonance{
            vowelway::hertz(m.formants[2]), vowelway::hertz(0.07 * m.formants[2]), false, {}};
        s.vowels.push_back(v);
    }
    return s;
}

/// Noise that falls by 6 dB an octave above 180 Hz, of unit power: a fan.
inline make::Samples fan(std::size_t n, std::mt19937& random) {
    auto x = make::white(n, random);
    double y = 0;
    for (auto& v : x) v = y = 0.93 * y + v;
    double const size = std::sqrt(make::power(x));
    for (auto& v : x) v /= size;
    return x;
}

/// A whisper has the shift of Swerdlin, Smith & Wolfe (2010) on it, 0.6 of it for F1 of a close vowel; `rate`
/// is the pulses in a second of a creak, or the pitch, which falls by a quarter in a spoken vowel.
inline make::Samples take(Said const& said, ProbeKind kind, double rate, std::mt19937& random) {
    auto f = said.formants;
    bool const close = said.vowel == "i" || said.vowel == "u";
    if (kind == ProbeKind::whisper) f = {f[0] + (close ? 153 : 255), f[1] + 115, f[2] + 125};
    std::size_t const n = 12800;
    make::Samples source;
    if (kind == ProbeKind::whisper)
        source = make::white(n, random);
    else if (kind == ProbeKind::creak)
        source = make::creak_source(n, 16000, rate, random);
    else if (kind == ProbeKind::sung)
        source = make::voiced_source(n, 16000, rate, 0.6, 2500, 0.004, 0.2, random);
    else
        for (int part = 0; part < 8; ++part) { // pulses at a pitch that falls from part to part
            auto const piece =
                make::voiced_source(n / 8, 16000, rate * (1 - 0.035 * part), 0.6, 2500, 0.01, 0, random);
            source.insert(source.end(), piece.begin(), piece.end());
        }
    auto x = make::resonate(std::move(source), make::peaks(f, 1036, 7800, kind == ProbeKind::whisper ? 2 : 1),
                            16000);
    double const size = std::sqrt(make::power(x));
    for (auto& v : x) v /= size;
    return x;
}

/// A fan `snr_db` below the takes, whose power is 1.
inline make::Samples together(std::vector<make::Samples> const& all, double snr_db, std::mt19937& random) {
    make::Samples x(12000, 0.0);
    for (auto const& t : all) {
        x.insert(x.end(), t.begin(), t.end());
        x.insert(x.end(), 8000, 0.0);
    }
    auto const hiss = fan(x.size(), random);
    for (std::size_t n = 0; n < x.size(); ++n) x[n] += std::pow(10, -snr_db / 20) * hiss[n];
    return x;
}

inline vowelway::analysis::Recording heard(make::Samples const& x) {
    vowelway::analysis::Recording r;
    r.name = "take.wav";
    vowelway::analysis::Listener listener(vowelway::analysis::measuring_rate);
    listener.hear(make::scaled(x));
    r.heard = listener.finish();
    return r;
}

inline vowelway::analysis::Recording recording(std::vector<make::Samples> const& all, double snr_db,
                                               std::mt19937& random) {
    return heard(together(all, snr_db, random));
}

/// The five vowels of the men in one way.
inline vowelway::analysis::Recording five(ProbeKind kind, double rate, double snr_db, unsigned seed) {
    std::mt19937 random(seed);
    std::vector<make::Samples> all;
    for (auto const& m : men) all.push_back(take(m, kind, rate, random));
    return recording(all, snr_db, random);
}

inline vowelway::analysis::MeasureRequest request(std::string const& vowels = "i ɛ ɑ ɔ u") {
    vowelway::analysis::MeasureRequest q;
    q.reference = average_man();
    q.vowels = vowelway::parse_vowels(vowels);
    return q;
}

} // namespace takes
