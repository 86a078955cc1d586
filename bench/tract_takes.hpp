// SPDX-License-Identifier: MIT
// Takes of whole vocal tracts, which no all-pole model has made: chain matrices with losses (Sondhi &
// Schroeter 1987), noise at different places, pulses with the windpipe heard behind them.
#pragma once

#include "taken.hpp"

#include "support/tract_synthesis.hpp"
#include "vowelway/acoustics/area_from_resonances.hpp"
#include "vowelway/acoustics/whispered.hpp"

#include <array>
#include <optional>
#include <string>

namespace vowelway::probes {

struct TractTake {
    make::Samples sound; ///< unit power
    std::array<double, 3> truth;
};

/// The peak of `level` next to `near`, within 15 % of it, on a grid of 1 Hz; `near` where there is none.
inline double peak_near(std::function<double(double)> const& level, double near) {
    for (double away = 0; away < 0.15 * near; away += 1)
        for (double f : {near - away, near + away})
            if (level(f) > level(f - 1) && level(f) >= level(f + 1)) return f;
    return near;
}

/// Unit power from the spectrum.
inline make::Samples sound_of(std::vector<make::Complex> x, std::size_t wanted) {
    make::transform(x, true);
    make::Samples s(wanted);
    for (std::size_t n = 0; n < wanted; ++n) s[n] = x[n].real();
    double const size = std::sqrt(make::power(s));
    for (auto& v : s) v /= size;
    return s;
}

/// A whisper or a creak of a tract with these formants. `place`: of a whisper's noise, share of the way to
/// the lips, 0 for the glottis. A creak has the windpipe's first two resonances as pairs of a pole and a
/// zero, 60 and 80 Hz apart (after D. H. Klatt & L. C. Klatt, J. Acoust. Soc. Am. 87, 1990, 820).
inline std::optional<TractTake> tract_take(std::array<double, 3> const& f, std::string const& ipa,
                                           double length_cm, ProbeKind kind, double place, Maker& m) {
    auto const fitted = acoustics::area_from_resonances({hertz(f[0]), hertz(f[1]), hertz(f[2])},
                                                        centimetres(length_cm), 0.1, parse_vowel(ipa));
    if (fitted.residual > 0.02) return std::nullopt;
    constexpr std::size_t n = 16384, kept = 13000;
    constexpr double rate = 16000;
    TractTake t;
    std::normal_distribution<double> normal;
    std::vector<make::Complex> x(n, 0.0);
    auto const closed = acoustics::resonances(fitted.tract);
    if (closed.size() < 3) return std::nullopt;
    if (kind == ProbeKind::whisper) {
        acoustics::NoisePlace at;
        if (place > 0) at = static_cast<std::size_t>(place * static_cast<double>(fitted.tract.size()));
        std::vector<double> levels{-200};
        for (double hz = 10; hz <= rate / 2 + 10; hz += 10)
            levels.push_back(
                acoustics::whispered_level(fitted.tract, hertz(hz), acoustics::whispering_glottis, at).value);
        for (std::size_t k = 1; k < n / 2; ++k) {
            double const where = rate * static_cast<double>(k) / n / 10;
            auto const i = static_cast<std::size_t>(where);
            double const db = levels[i] + (where - static_cast<double>(i)) * (levels[i + 1] - levels[i]);
            x[k] = make::Complex(normal(m.random), normal(m.random)) * std::pow(10, db / 20);
            x[n - k] = std::conj(x[k]);
        }
        for (std::size_t k = 0; k < 3; ++k)
            t.truth[k] = peak_near(
                [&](double hz) {
                    return acoustics::whispered_level(fitted.tract, hertz(hz)).value - 20 * std::log10(hz);
                },
                in_hertz(closed[k].centre));
    } else {
        auto pulses = make::creak_source(n, rate, m.draw(18, 65), m.random);
        for (std::size_t k = 0; k < n; ++k) x[k] = pulses[k];
        make::transform(x, false);
        std::vector<double> areas;
        for (auto const& s : fitted.tract) areas.push_back(in_square_centimetres(s.area));
        double const section = in_centimetres(fitted.tract[0].length);
        auto const pair = [](double hz, double pole, double zero, double width) {
            auto const term = [&](double at) {
                return make::Complex(at * at - hz * hz, width * hz) / (at * at);
            };
            return term(zero) / term(pole);
        };
        for (std::size_t k = 1; k < n / 2; ++k) {
            double const hz = rate * static_cast<double>(k) / n;
            x[k] *= make::lip_flow(areas, section, hz) * pair(hz, 600, 660, 120) * pair(hz, 1350, 1430, 150);
            x[n - k] = std::conj(x[k]);
        }
        x[0] = x[n / 2] = 0;
        for (std::size_t k = 0; k < 3; ++k) t.truth[k] = in_hertz(closed[k].centre);
    }
    t.sound = sound_of(std::move(x), kept);
    return t;
}

} // namespace vowelway::probes
