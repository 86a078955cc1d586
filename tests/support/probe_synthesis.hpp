// SPDX-License-Identifier: MIT
// Probes whose resonances are known: cascades of resonators and whole vocal tracts, excited by noise, by
// separate pulses, or by a glottal pulse train. Shares nothing with the estimator.
#pragma once

#include <algorithm>
#include <cmath>
#include <complex>
#include <cstddef>
#include <numbers>
#include <random>
#include <span>
#include <vector>

namespace probe_synthesis {

constexpr double pi = std::numbers::pi;
using Samples = std::vector<double>;

struct Peak {
    double hz, bandwidth_hz;
};

/// Bandwidths of a closed tract: Tappert, Martony & Fant (1963) above 500 Hz, Khodai-Joopari & Clermont
/// (2002) below.
inline double usual_bandwidth(double hz) {
    return hz >= 500 ? 50 * (1 + hz * hz / 6e6) : 52.08 * (1 + (hz - 500) * (hz - 500) / 1e5);
}

/// F1..F3 as given, the higher ones at `spacing` up to `top`; bandwidths of the closed tract times `wider`.
inline std::vector<Peak> peaks(std::span<double const> formants, double spacing, double top, double wider) {
    std::vector<Peak> all;
    for (double f : formants) all.push_back({f, wider * usual_bandwidth(f)});
    double next = std::max(formants.back() + 0.8 * spacing, 3.5 * spacing);
    for (; next < top; next += spacing) all.push_back({next, wider * usual_bandwidth(next)});
    return all;
}

/// y[n] = A x[n] + B y[n-1] + C y[n-2] (D. H. Klatt, J. Acoust. Soc. Am. 67, 1980, 971), one after another.
inline Samples resonate(Samples x, std::vector<Peak> const& all, double rate) {
    for (auto const& p : all) {
        double const c = -std::exp(-2 * pi * p.bandwidth_hz / rate);
        double const b = 2 * std::exp(-pi * p.bandwidth_hz / rate) * std::cos(2 * pi * p.hz / rate);
        double const a = 1 - b - c;
        double y1 = 0, y2 = 0;
        for (auto& v : x) {
            double const y = a * v + b * y1 + c * y2;
            y2 = y1;
            y1 = y;
            v = y;
        }
    }
    return x;
}

inline Samples white(std::size_t n, std::mt19937& random) {
    std::normal_distribution<double> normal;
    Samples x(n);
    for (auto& v : x) v = normal(random);
    return x;
}

/// First-order slope: y[n] = x[n] + k x[n-1]; k > 0 falls, k < 0 rises towards high frequencies.
inline Samples sloped(Samples x, double k) {
    for (std::size_t n = x.size(); n-- > 1;) x[n] += k * x[n - 1];
    return x;
}

/// Flow derivative 2at - 3bt^2 over the open part of each period, then a smoothing by one pole at
/// `corner` Hz for a closure that is not sudden (after D. H. Klatt & L. C. Klatt, J. Acoust. Soc. Am. 87,
/// 1990, 820). `jitter` is the relative standard deviation of a period; vibrato in semitones at 5.5 Hz.
inline Samples voiced_source(std::size_t n, double rate, double fo, double open, double corner, double jitter,
                             double vibrato, std::mt19937& random) {
    std::normal_distribution<double> normal;
    Samples x(n, 0.0);
    double start = 0;
    while (start < static_cast<double>(n)) {
        double const now = fo * std::exp2(vibrato / 12 * std::sin(2 * pi * 5.5 * start / rate));
        double const period = std::max(8.0, rate / now * (1 + jitter * normal(random)));
        double const opening = open * period;
        for (double t = std::ceil(start) - start; t < opening; t += 1) {
            auto const at = static_cast<std::size_t>(std::lround(start + t));
            double const u = t / opening;
            if (at < n) x[at] += 2 * u - 3 * u * u;
        }
        start += period;
    }
    double const keep = std::exp(-2 * pi * corner / rate);
    double y = 0;
    for (auto& v : x) v = y = keep * y + (1 - keep) * v;
    return x;
}

/// Short flow pulses at about `rate_hz` in a second, their distances scattered by a quarter: a creak.
inline Samples creak_source(std::size_t n, double rate, double rate_hz, std::mt19937& random) {
    std::normal_distribution<double> normal;
    Samples x(n, 0.0);
    double start = 0.2 * rate / rate_hz;
    while (start < static_cast<double>(n)) {
        double const open = 0.003 * rate, size = 1 + 0.2 * normal(random);
        for (double t = std::ceil(start) - start; t < open; t += 1) {
            auto const at = static_cast<std::size_t>(std::lround(start + t));
            double const u = t / open;
            if (at < n) x[at] += size * (2 * u - 3 * u * u);
        }
        start += rate / rate_hz * std::max(0.3, 1 + 0.25 * normal(random));
    }
    return x;
}

inline double power(std::span<double const> x) {
    double sum = 0;
    for (double v : x) sum += v * v;
    return x.empty() ? 0 : sum / static_cast<double>(x.size());
}

/// White noise `snr_db` below the sound.
inline Samples with_noise(Samples x, double snr_db, std::mt19937& random) {
    double const size = std::sqrt(power(x) * std::pow(10, -snr_db / 10));
    std::normal_distribution<double> normal;
    for (auto& v : x) v += size * normal(random);
    return x;
}

/// Scaled so that the largest sample is `peak`.
inline std::vector<float> scaled(Samples const& x, double peak = 0.3) {
    double most = 1e-12;
    for (double v : x) most = std::max(most, std::abs(v));
    std::vector<float> y(x.size());
    for (std::size_t n = 0; n < x.size(); ++n) y[n] = static_cast<float>(x[n] * peak / most);
    return y;
}

/// A fast gain control at 16 kHz: follows the level within 1 ms, lets go within 40; an eighth of the decibels
/// above the threshold remain.
inline Samples fast_gain(Samples x) {
    double most = 0, level = 0;
    for (double v : x) most = std::max(most, std::abs(v));
    for (auto& v : x) {
        v /= most;
        double const t = std::abs(v) > level ? 0.001 : 0.04;
        level += (std::abs(v) - level) * (1 - std::exp(-1 / (16000 * t)));
        if (level > 0.05) v *= std::pow(level / 0.05, 1.0 / 8 - 1);
    }
    return x;
}

/// Breath is not as even as a machine's: a quarter more and less, five times a second (ours).
inline Samples breathed(Samples x) {
    for (std::size_t n = 0; n < x.size(); ++n)
        x[n] *= 1 + 0.25 * std::sin(2 * pi * 5 * static_cast<double>(n) / 16000);
    return x;
}

} // namespace probe_synthesis
