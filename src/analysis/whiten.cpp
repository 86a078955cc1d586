// SPDX-License-Identifier: MIT
#include "analysis/whiten.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace vowelway::analysis {
namespace {

constexpr double half_turn = std::numbers::pi;
constexpr double leak = 0.97;            // of an integration
constexpr double well_described = 0.955; // whiteness from which on no zeros are looked for
constexpr double worth_it = 1.01;        // gain of whiteness for which a pair of zeros is believed
constexpr double nearly = 0.3;           // of what the best way leaves: others this near are as good
/// Gain of whiteness below which the sound stays as it is. Whispers of model tracts from the glottis gain up
/// to 1.022 by chance: there a second integration or a zero put F1 of a close /i/ anywhere.
constexpr double clearly_whiter = 1.025;
constexpr std::size_t most_pairs = 2, most_ways = 2;
constexpr Frequency lowest_zero = hertz(400);
constexpr Frequency lowest_heard =
    hertz(150); // below it two zeros undone would make rumble a line of its own
/// A tract shut behind the noise takes in no air at the resonance of its walls (180 to 200 Hz; K. N. Stevens,
/// Acoustic Phonetics, 1998), not at 0 Hz as one with hard walls does.
constexpr ZeroPair walls{hertz(200), hertz(100)};

std::size_t last_bin(PowerSpectrum const& s, Frequency ceiling) {
    return std::min(static_cast<std::size_t>(std::lround(ceiling / s.bin)), s.power.size() - 1);
}

/// 1 - 2 r cos(w) + r^2 of a zero of this radius, seen at the angle `w` from it.
double distance_to(double radius, double angle) { return 1 - 2 * radius * std::cos(angle) + radius * radius; }

void integrate(PowerSpectrum& s, Frequency rate) {
    double const step = 2 * half_turn * (s.bin / rate);
    for (std::size_t k = 0; k < s.power.size(); ++k)
        s.power[k] /= distance_to(leak, step * static_cast<double>(k));
}

void undo(PowerSpectrum& s, Frequency rate, ZeroPair const& z, std::size_t last) {
    double const step = 2 * half_turn * (s.bin / rate), at = 2 * half_turn * (z.centre / rate),
                 radius = std::exp(-half_turn * (z.bandwidth / rate));
    for (std::size_t k = 0; k <= last; ++k) {
        double const w = step * static_cast<double>(k);
        s.power[k] /= distance_to(radius, w - at) * distance_to(radius, w + at);
    }
}

/// The pair whose undoing leaves the whitest error: a coarse grid, then a finer one about the best.
ZeroPair best_pair(PowerSpectrum const& s, Frequency rate, Frequency ceiling, int order, double& best) {
    auto const last = last_bin(s, ceiling);
    ZeroPair found{hertz(0), hertz(0)};
    auto const attempt = [&](double hz, double width) {
        if (hz < in_hertz(lowest_zero) || hz > in_hertz(ceiling)) return;
        ZeroPair const z{hertz(hz), hertz(width)};
        auto now = s;
        undo(now, rate, z, last);
        if (double const w = whiteness(now, ceiling, order); w > best) best = w, found = z;
    };
    for (double hz = in_hertz(lowest_zero); hz < in_hertz(ceiling); hz *= 1.08) attempt(hz, 150);
    if (in_hertz(found.centre) == 0) return found;
    for (double step : {0.04, 0.02, 0.01}) {
        auto const about = found;
        for (double width : {0.6, 1.0, 1.6})
            for (double away : {-step, 0.0, step})
                if (width != 1 || away != 0)
                    attempt(in_hertz(about.centre) * (1 + away), in_hertz(about.bandwidth) * width);
    }
    return found;
}

double score(Whitening const& w) {
    return w.whiteness / std::pow(worth_it, static_cast<double>(w.zeros.size()));
}

/// Beginning with this, more pairs of zeros while they are worth it; `s` is made so white.
Whitening with_zeros(PowerSpectrum s, Frequency rate, Frequency ceiling, int order, Whitening found) {
    auto const first = found.zeros.size();
    while (found.zeros.size() - first < most_pairs && found.whiteness < well_described) {
        double white = found.whiteness;
        auto const pair = best_pair(s, rate, ceiling, order, white);
        if (white < worth_it * found.whiteness) break;
        found.zeros.push_back(pair), found.whiteness = white;
        undo(s, rate, pair, s.power.size() - 1);
    }
    return found;
}

} // namespace

double whiteness(PowerSpectrum const& spectrum, Frequency ceiling, int order) {
    auto const found = predict(band_autocorrelation(spectrum, ceiling, order), order, ceiling * 2.0);
    auto const last = last_bin(spectrum, ceiling);
    std::vector<double> of_filter(found.a.size(), 0.0); // its autocorrelation
    for (std::size_t i = 0; i < found.a.size(); ++i)
        for (std::size_t j = 0; j + i < found.a.size(); ++j) of_filter[i] += found.a[j] * found.a[i + j];
    double sum = 0, logs = 0; // not found.error: rounding spoils it where the spectrum spans too much
    for (std::size_t k = 1; k < last; ++k) {
        double const step = std::cos(half_turn * static_cast<double>(k) / static_cast<double>(last));
        double power = of_filter[0], before = 1, now = step; // cos(m x) by the three-term recursion
        for (std::size_t m = 1; m < of_filter.size(); ++m) {
            power += 2 * of_filter[m] * now;
            double const next = 2 * step * now - before;
            before = now, now = next;
        }
        double const error = spectrum.power[k] * std::max(power, 1e-12) + 1e-300;
        sum += error, logs += std::log(error);
    }
    auto const count = static_cast<double>(last - 1);
    return std::exp(logs / count) / (sum / count);
}

std::vector<Whitening> find_whitenings(PowerSpectrum const& spectrum, Frequency rate, Frequency ceiling,
                                       int order) {
    std::vector<Whitening> all{{0, {}}, {1, {}}, {2, {}}, {1, {walls}}};
    std::vector<PowerSpectrum> each;
    double most = 0;
    for (auto& w : all) {
        each.push_back(spectrum);
        whiten(each.back(), rate, w);
        w.whiteness = whiteness(each.back(), ceiling, order);
        most = std::max(most, w.whiteness);
    }
    auto plain = all[1].whiteness > all[0].whiteness ? all[1] : all[0]; // the lips' zero at most
    plain.plain = plain.integrations;
    if (plain.whiteness > well_described) return {plain};
    if (most < well_described)
        for (std::size_t i = 0; i < all.size(); ++i)
            all[i] = with_zeros(each[i], rate, ceiling, order, all[i]);
    std::stable_sort(all.begin(), all.end(),
                     [](Whitening const& a, Whitening const& b) { return score(a) > score(b); });
    for (auto& w : all) w.gain = w.whiteness / plain.whiteness, w.plain = plain.integrations;
    if (all[0].gain < clearly_whiter) return {plain};
    double const least = score(all[0]) - nearly * std::max(0.0, 1 - all[0].whiteness);
    while (score(all.back()) < least || all.back().gain < clearly_whiter || all.size() > most_ways)
        all.pop_back();
    return all;
}

void whiten(PowerSpectrum& spectrum, Frequency rate, Whitening const& w) {
    for (int times = 0; times < w.integrations; ++times) integrate(spectrum, rate);
    for (auto const& z : w.zeros) undo(spectrum, rate, z, spectrum.power.size() - 1);
    if (w.integrations < 2 && w.zeros.empty()) return;
    auto const low =
        std::min(static_cast<std::size_t>(lowest_heard / spectrum.bin), spectrum.power.size() - 1);
    std::fill_n(spectrum.power.begin(), low, spectrum.power[low]);
}

} // namespace vowelway::analysis
