// SPDX-License-Identifier: MIT
// Whole recordings of takes of the speakers of Peterson & Barney (1952), for the programs that measure how
// takes are read as they come.
#pragma once

#include "probes.hpp"

#include "analysis/resample.hpp"
#include "vowelway/analysis/measure.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/io/profile/built_in.hpp"

#include <algorithm>
#include <fstream>
#include <map>
#include <optional>
#include <sstream>
#include <stdexcept>
#include <string>

namespace vowelway::probes {

using analysis::ProbeKind;

struct Speaker {
    std::string group;
    std::map<std::string, std::array<double, 3>> formants; // by IPA
};

/// Every speaker with all of the vowels.
inline std::vector<Speaker> speakers() {
    std::map<std::string, Speaker> all;
    std::ifstream file("tests/data/measuring/pb1952_first_repetition.csv");
    std::string line;
    std::getline(file, line);
    while (std::getline(file, line)) {
        std::istringstream row(line);
        std::vector<std::string> r;
        for (std::string cell; std::getline(row, cell, ',');) r.push_back(cell);
        auto& s = all[r.at(0) + r.at(1)];
        s.group = r.at(0);
        s.formants[r.at(2)] = {std::stod(r.at(4)), std::stod(r.at(5)), std::stod(r.at(6))};
    }
    if (all.empty()) throw std::runtime_error("no speakers: run from the root of the project");
    std::vector<Speaker> list;
    for (auto& [name, s] : all) list.push_back(std::move(s));
    return list;
}

inline double spacing_of(std::string const& group) {
    return group == "m" ? 1036 : group == "w" ? 1241 : 1400;
}
inline VoiceType voice_of(std::string const& group) {
    return group == "m" ? VoiceType::baritone : group == "w" ? VoiceType::mezzo : VoiceType::treble;
}

struct Room {
    double snr_db = 40;
    bool fan = false; ///< noise that falls by 6 dB an octave above 180 Hz; else white
};

struct Maker {
    std::mt19937 random{7};
    std::uniform_real_distribution<double> unit;
    std::array<double, 3> truth{}; ///< formants of the last take
    double draw(double low, double high) { return low + (high - low) * unit(random); }

    make::Samples at_listening_rate(make::Samples const& x, double rate) {
        std::vector<float> small(x.size());
        for (std::size_t n = 0; n < x.size(); ++n) small[n] = static_cast<float>(1e-3 * x[n]);
        return analysis::resample(small, hertz(rate), hertz(16000)).samples;
    }

    /// The formants of a probe. A whisper has the published shift (Swerdlin, Smith & Wolfe 2010) with its
    /// deviation between singers, `singer` in deviations.
    std::array<double, 3> probed(Speaker const& s, std::string const& ipa, ProbeKind kind, double singer) {
        auto f = s.formants.at(ipa);
        if (kind == ProbeKind::whisper) {
            bool const close = ipa == "i" || ipa == "u";
            f[0] += (close ? 0.6 : 1.0) * (255 + 60 * singer + draw(-60, 60)), f[1] += 115 + 70 * singer,
                f[2] += 125;
        } else if (kind == ProbeKind::creak) {
            f[0] += 45 + 25 * singer;
        }
        f[1] = std::max(f[1], 1.2 * f[0]); // the shift may not turn the order round
        return f;
    }

    /// One take of unit power, 0.5 to 1 s.
    make::Samples take(Speaker const& s, std::string const& ipa, ProbeKind kind, double singer, double fo) {
        auto const f = truth = probed(s, ipa, kind, singer);
        double const rate = kind == ProbeKind::whisper ? 16000 : 48000;
        auto const n = static_cast<std::size_t>(draw(0.5, 1) * rate);
        auto const all = make::peaks(f, spacing_of(s.group) * draw(0.92, 1.08), 7800,
                                     kind == ProbeKind::whisper ? draw(1, 3) : draw(1, 2));
        make::Samples source;
        if (kind == ProbeKind::whisper) {
            source = make::sloped(make::white(n, random), draw(-0.5, 0.5));
            double const beat = draw(3, 8), depth = draw(0, 0.4); // breath is not even
            for (std::size_t i = 0; i < n; ++i)
                source[i] *= 1 + depth * std::sin(2 * make::pi * beat * static_cast<double>(i) / rate);
        } else if (kind == ProbeKind::creak) {
            source = make::creak_source(n, rate, draw(18, 65), random);
        } else {
            bool const spoken = kind == ProbeKind::spoken;
            source = make::voiced_source(n, rate, fo, draw(0.5, 0.7), draw(1500, 4000), spoken ? 0.01 : 0.004,
                                         spoken ? 0 : draw(0, 0.5), random);
            if (spoken) source = glide(std::move(source), draw(0.75, 0.9));
        }
        auto x = make::resonate(std::move(source), all, rate);
        if (rate > 16000) x = at_listening_rate(x, rate);
        double const size = std::sqrt(make::power(x));
        for (auto& v : x) v /= size;
        return x;
    }

    /// Played slower and slower: the pitch falls to `to` of what it was.
    static make::Samples glide(make::Samples const& x, double to) {
        make::Samples y(x.size(), 0.0);
        double at = 0;
        for (std::size_t n = 0; n < y.size(); ++n) {
            auto const i = static_cast<std::size_t>(at);
            if (i + 1 >= x.size()) break;
            double const part = at - static_cast<double>(i);
            y[n] = (1 - part) * x[i] + part * x[i + 1];
            at += 1 - (1 - to) * static_cast<double>(n) / static_cast<double>(y.size());
        }
        return y;
    }

    make::Samples noise(std::size_t n, bool fan) {
        auto x = make::white(n, random);
        double y = 0;
        if (fan)
            for (auto& v : x) v = y = 0.93 * y + v;
        double const size = std::sqrt(make::power(x));
        for (auto& v : x) v /= size;
        return x;
    }

    std::vector<float> recording(std::vector<make::Samples> const& takes, Room room) {
        return make::scaled(together(takes, room));
    }
    make::Samples together(std::vector<make::Samples> const& takes, Room room) {
        make::Samples all(12000, 0.0);
        for (auto const& t : takes) {
            all.insert(all.end(), t.begin(), t.end());
            all.insert(all.end(), 8000, 0.0);
        }
        auto const hiss = noise(all.size(), room.fan);
        for (std::size_t n = 0; n < all.size(); ++n) all[n] += std::pow(10, -room.snr_db / 20) * hiss[n];
        return all;
    }
};

inline analysis::Recording heard(std::vector<float> const& samples) {
    analysis::Recording r;
    r.name = "take.wav";
    r.heard = listened(samples);
    return r;
}

inline analysis::MeasureRequest asked(Speaker const& s, std::string const& vowels) {
    analysis::MeasureRequest q;
    q.reference = io::built_in_voice(voice_of(s.group));
    q.vowels = parse_vowels(vowels);
    return q;
}

inline std::optional<analysis::Measurements> try_measure(analysis::Recording const& r,
                                                         analysis::MeasureRequest const& q) {
    try {
        return analysis::measure({r}, q);
    } catch (InputError const&) {
        return std::nullopt;
    }
}

inline constexpr std::array all_kinds{ProbeKind::whisper, ProbeKind::creak, ProbeKind::sung,
                                      ProbeKind::spoken};
inline std::vector<std::string> const listed{"i", "ɛ", "ɑ", "ɔ", "u"};
inline std::string const list = "i ɛ ɑ ɔ u";

inline std::vector<Speaker> every(std::size_t step) {
    auto const all = speakers();
    std::vector<Speaker> some;
    for (std::size_t i = 0; i < all.size(); i += step) some.push_back(all[i]);
    return some;
}

inline std::vector<make::Samples> said(Maker& m, Speaker const& s, std::vector<std::string> const& vowels,
                                       ProbeKind kind) {
    double const singer = m.draw(-1.5, 1.5),
                 fo = kind == ProbeKind::spoken ? m.draw(95, 260) : m.draw(80, 290);
    std::vector<make::Samples> takes;
    for (auto const& v : vowels)
        takes.push_back(m.take(s, v, kind, singer, kind == ProbeKind::spoken ? fo * m.draw(0.85, 1.15) : fo));
    return takes;
}

} // namespace vowelway::probes
