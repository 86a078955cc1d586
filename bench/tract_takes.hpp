// SPDX-License-Identifier: MIT
// Takes of whole vocal tracts, which no all-pole model has made: chain matrices with losses (Sondhi &
// Schroeter 1987), noise at different places, pulses with the windpipe heard behind them.
#pragma once

#include "taken.hpp"

#include "support/tract_synthesis.hpp"
#include "vowelway/acoustics/area_from_resonances.hpp"

#include <array>
#include <optional>
#include <string>

namespace vowelway::probes {

struct TractTake {
    make::Samples sound; ///< unit power
    std::array<double, 3> truth;
};

/// Unit power from the spectrum.
inline make::Samples sound_of(std::vector<make::Complex> x, std::size_t wanted) {
    make::transform(x, true);
    make::Samples s(wanted);
    for (std::size_t n = 0; n < wanted; ++n) s[n] = x[n].real();
    double const size = std::sqrt(make::power(s));
    for (auto& v : s) v /= size;
    return s;
}

/// A whisper, a creak or a note at `fo` of a tract with these formants. `place`: of a whisper's noise, share
/// of the way to the lips, 0 for the glottis. A creak has the windpipe's first two resonances as pairs of a
/// pole and a zero, 60 and 80 Hz apart (after D. H. Klatt & L. C. Klatt, J. Acoust. Soc. Am. 87, 1990, 820).
inline std::optional<TractTake> tract_take(std::array<double, 3> const& f, std::string const& ipa,
                                           double length_cm, ProbeKind kind, double place, double fo,
                                           Maker& m) {
    auto const fitted = acoustics::area_from_resonances({hertz(f[0]), hertz(f[1]), hertz(f[2])},
                                                        centimetres(length_cm), 0.1, parse_vowel(ipa));
    if (fitted.residual > 0.02) return std::nullopt;
    constexpr std::size_t n = 16384, kept = 13000;
    constexpr double rate = 16000;
    TractTake t;
    std::normal_distribution<double> normal;
    std::vector<make::Complex> x(n, 0.0);
    std::vector<double> areas;
    for (auto const& section : fitted.tract) areas.push_back(in_square_centimetres(section.area));
    double const length = in_centimetres(fitted.tract[0].length);
    auto const closed = acoustics::resonances(fitted.tract);
    if (closed.size() < 3) return std::nullopt;
    double const glottis = kind == ProbeKind::whisper ? std::exp(m.draw(std::log(200), std::log(1500))) : 1e9;
    t.truth = make::natural_frequencies<3>(
        areas, length, glottis,
        {in_hertz(closed[0].centre), in_hertz(closed[1].centre), in_hertz(closed[2].centre)});
    if (kind == ProbeKind::whisper) {
        auto const joint = static_cast<std::size_t>(place * static_cast<double>(areas.size()));
        for (std::size_t k = 1; k < n / 2; ++k) {
            double const hz = rate * static_cast<double>(k) / n;
            x[k] = make::Complex(normal(m.random), normal(m.random)) * hz *
                   make::lip_flow_of_noise(areas, length, joint, glottis, hz);
            x[n - k] = std::conj(x[k]);
        }
    } else {
        bool const creaks = kind == ProbeKind::creak;
        auto pulses = creaks ? make::creak_source(n, rate, m.draw(18, 65), m.random)
                             : make::voiced_source(n, rate, fo, m.draw(0.5, 0.7), m.draw(1500, 4000), 0.004,
                                                   m.draw(0, 0.5), m.random);
        for (std::size_t k = 0; k < n; ++k) x[k] = pulses[k];
        make::transform(x, false);
        auto const pair = [](double hz, double pole, double zero, double width) {
            auto const term = [&](double at) {
                return make::Complex(at * at - hz * hz, width * hz) / (at * at);
            };
            return term(zero) / term(pole);
        };
        for (std::size_t k = 1; k < n / 2; ++k) {
            double const hz = rate * static_cast<double>(k) / n;
            x[k] *= make::lip_flow(areas, length, hz);
            if (creaks) x[k] *= pair(hz, 600, 660, 120) * pair(hz, 1350, 1430, 150);
            x[n - k] = std::conj(x[k]);
        }
        x[0] = x[n / 2] = 0;
    }
    t.sound = sound_of(std::move(x), kept);
    if (kind == ProbeKind::whisper) { // breath is not even
        double const beat = m.draw(3, 8), depth = m.draw(0, 0.4);
        for (std::size_t k = 0; k < kept; ++k)
            t.sound[k] *= 1 + depth * std::sin(2 * make::pi * beat * static_cast<double>(k) / rate);
    }
    return t;
}

} // namespace vowelway::probes
