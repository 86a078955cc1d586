// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/note_spectrum.hpp"

#include "vowelway/acoustics/hearing.hpp"
#include "vowelway/acoustics/scales.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace vowelway::acoustics {

namespace {
double power_ratio(Decibels level) { return std::pow(10, level.value / 10); }
} // namespace

Frequency Blur::widened(ResonancePeak const& peak) const {
    double const swing =
        std::numbers::sqrt2 / 2 * (std::exp2(vibrato.value / 1200) - 1) * peak.centre.value();
    double const miss = 0.6745 * placement.value();
    return hertz(peak.bandwidth.value() + 2 * std::sqrt(swing * swing + miss * miss));
}

NoteSpectrum::NoteSpectrum(Pitch fo, Frequency quarter, Source const& source, Decibels loudness, Blur blur)
    : fo_(fo), blur_(blur), low_voice_(bark(acoustics::low_voice(quarter).frequency())) {
    constexpr double highest = 5000;
    int const count = std::clamp(static_cast<int>(highest / fo.frequency().value()), 1, most_harmonics);
    for (int n = 1; n <= count; ++n) {
        auto const f = fo.frequency() * static_cast<double>(n);
        double const khz = f.value() / 1000;
        squared_.push_back(khz * khz);
        source_.push_back(power_ratio(source.flow_level(f, fo, loudness) + radiated_level(f) +
                                      higher_pole_correction(4, f, quarter)));
        weight_.push_back(power_ratio(a_weighting(f)));
        place_.push_back(bark(f).value);
    }
}

void NoteSpectrum::powers(ResonanceSet const& shape, std::span<double> out) const {
    // In powers a resonance is (F²+b²)² / ((f²-F²+b²)² + 4F²b²), b half its bandwidth: no root, no logarithm,
    // and one division for all four.
    std::array<double, 4> offset, width;
    double gain = 1;
    for (std::size_t k = 0; k < 4; ++k) {
        auto const& peak = shape.peaks[k];
        double const centre = peak.centre.value() / 1000, half = blur_.widened(peak).value() / 2000;
        double const c2 = centre * centre, b2 = half * half;
        offset[k] = b2 - c2;
        width[k] = 4 * c2 * b2;
        gain *= (c2 + b2) * (c2 + b2);
    }
    double const* const squared = squared_.data();
    double const* const source = source_.data();
    double* const power = out.data();
    std::size_t const count = squared_.size();
    for (std::size_t n = 0; n < count; ++n) {
        double const s = squared[n];
        double const a = s + offset[0], b = s + offset[1], c = s + offset[2], d = s + offset[3];
        power[n] = source[n] * gain /
                   ((a * a + width[0]) * (b * b + width[1]) * ((c * c + width[2]) * (d * d + width[3])));
    }
}

Decibels NoteSpectrum::level_of(std::span<double const> powers) const {
    double sum = 0;
    for (std::size_t n = 0; n < weight_.size(); ++n) sum += weight_[n] * powers[n];
    return {10 * std::log10(sum)};
}

Decibels NoteSpectrum::level(ResonanceSet const& shape) const {
    std::array<double, most_harmonics> power;
    powers(shape, power);
    return level_of(power);
}

std::vector<Decibels> NoteSpectrum::harmonic_levels(ResonanceSet const& shape) const {
    std::vector<double> power(squared_.size());
    powers(shape, power);
    std::vector<Decibels> out;
    for (double p : power) out.push_back({10 * std::log10(p)});
    return out;
}

} // namespace vowelway::acoustics
