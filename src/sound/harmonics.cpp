// SPDX-License-Identifier: MIT
#include "sound/harmonics.hpp"

#include "vowelway/acoustics/transfer.hpp"
#include "vowelway/sound/tones.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace vowelway::sound {

namespace {

// A shape with what is known of it turned into numbers: poles -b +- jF of each resonance, rad/s over 2 pi.
struct Poles {
    std::array<double, 4> half, squared; // b, F² + b²
};

Poles poles_of(acoustics::ResonanceSet const& shape, acoustics::Blur const& blur) {
    Poles out;
    for (std::size_t k = 0; k < 4; ++k) {
        double const half = in_hertz(blur.widened(shape.peaks[k])) / 2,
                     centre = in_hertz(shape.peaks[k].centre);
        out.half[k] = half;
        out.squared[k] = centre * centre + half * half;
    }
    return out;
}

// Fant's cascade with its phase: (F² + b²) / ((b + jf)² + F²) = (F² + b²) / (F² + b² - f² + 2jbf).
std::complex<double> through(Poles const& p, double f) {
    double re = 1, im = 0, gain = 1;
    for (std::size_t k = 0; k < 4; ++k) {
        double const a = p.squared[k] - f * f, b = 2 * p.half[k] * f;
        double const next = re * a - im * b;
        im = re * b + im * a;
        re = next;
        gain *= p.squared[k];
    }
    double const scale = gain / (re * re + im * im);
    return {re * scale, -im * scale};
}

double fade(double f) {
    if (f <= band_hz) return 1;
    return 0.5 * (1 + std::cos(std::numbers::pi * (f - band_hz) / (silent_hz - band_hz)));
}

} // namespace

void Harmonics::of(Moment const& moment, std::vector<std::complex<double>>& out) {
    double const fo = in_hertz(moment.pitch.frequency());
    auto const count = static_cast<std::size_t>(std::max(1.0, std::ceil(silent_hz / fo) - 1));
    out.resize(count);
    // The flow of acoustics::Source: its level at fo, then 1/(1 + (f/100 Hz)^power).
    double const power =
        -voice_.source.slope_at(moment.pitch, moment.loudness).value / (20 * std::log10(2.0));
    if (power != power_) number_power_.clear();
    power_ = power;
    while (number_power_.size() < count)
        number_power_.push_back(std::pow(static_cast<double>(number_power_.size() + 1), power));
    double const first = std::pow(fo / 100, power);
    auto const f0 = moment.pitch.frequency();
    auto const level =
        voice_.source.flow_level(f0, moment.pitch, moment.loudness) + acoustics::radiated_level(f0);
    double const fundamental = peak_of(level) * (1 + first);
    auto const shape = acoustics::resonance_set(moment.r1, moment.r2, voice_.quarter);
    auto const poles = poles_of(shape, voice_.blur);
    double const per_decibel = std::numbers::ln10 / 20;

    double sum = 0, noise = 0;
    for (std::size_t i = 0; i < count; ++i) {
        double const n = static_cast<double>(i + 1), f = n * fo;
        double const above =
            std::exp(per_decibel * acoustics::higher_pole_correction(4, hertz(f), voice_.quarter).value);
        auto const tract = through(poles, f);
        // The flow falls like two poles at 100 Hz, and turns the phase as they do.
        double const re = 100 * 100 - f * f, im = 200 * f, turn = 1 / std::hypot(re, im);
        double const peak = fundamental * n / (1 + first * number_power_[i]) * above * fade(f);
        out[i] = peak * tract * std::complex<double>(re * turn, -im * turn);
        sum += std::norm(out[i]);
        noise += std::norm(tract) * f * f;
    }
    // Noise of mean square 1 up to half the sample rate, through the same cascade, then its slope: so much
    // comes out between the harmonics.
    double const density = fo / (in_hertz(sample_rate) / 2);
    double const slope = 2 * std::numbers::pi / in_hertz(sample_rate);
    double const out_power = noise * density * slope * slope;
    noise_gain_ = std::sqrt(sum / 2 / out_power) * std::exp(-per_decibel * voice_.breath_below.value);
}

std::vector<Decibels> sung_levels(Voice const& voice, Moment const& moment) {
    std::vector<std::complex<double>> peaks;
    Harmonics(voice).of(moment, peaks);
    std::vector<Decibels> out;
    double const fo = in_hertz(moment.pitch.frequency());
    for (std::size_t i = 0; i < peaks.size() && (i == 0 || static_cast<double>(i + 1) * fo <= band_hz); ++i)
        out.push_back({20 * std::log10(std::abs(peaks[i]) / peak_of(Decibels{0}))});
    return out;
}

} // namespace vowelway::sound
