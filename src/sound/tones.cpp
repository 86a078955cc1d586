// SPDX-License-Identifier: MIT
#include "vowelway/sound/tones.hpp"

#include "sound/noise.hpp"
#include "vowelway/acoustics/scales.hpp"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>
#include <vector>

namespace vowelway::sound {

namespace {

constexpr double pi = std::numbers::pi;

double sample_hz() { return in_hertz(sample_rate); }

// Sines of fixed frequency, each dying away at its own rate (0: not at all).
class Sines : public Part {
  public:
    void also(Frequency f, double peak, Duration dies = {}) {
        double const decay = dies > Duration{} ? std::exp(-1 / (in_seconds(dies) * sample_hz())) : 1;
        turning_.push_back({{0, -peak}, std::polar(decay, 2 * pi * in_hertz(f) / sample_hz())});
    }
    void add(std::span<double> block) override {
        for (auto& one : turning_)
            for (double& sample : block) {
                sample += one.now.real();
                one.now *= one.turn;
            }
    }

  private:
    struct Turning {
        std::complex<double> now, turn;
    };
    std::vector<Turning> turning_;
};

class Band : public Part {
  public:
    Band(Frequency centre, Decibels level) : noise_(static_cast<std::uint64_t>(in_hertz(centre))) {
        double const hz = in_hertz(centre);
        // Two equal resonators in a row are 0.64 times as wide at half power as one.
        double const width = std::max(60.0, 0.1 * hz) / 0.64;
        for (auto& r : resonators_) r.tune(hz, width);
        // The mean square of the band from its own response to an impulse (Parseval).
        auto trial = resonators_;
        double energy = 0;
        for (int i = 0; i < 48000; ++i) {
            double const y = trial[1](trial[0](i == 0 ? 1 : 0));
            energy += y * y;
        }
        factor_ = peak_of(level) / std::numbers::sqrt2 / std::sqrt(energy);
        for (int i = 0; i < 4800; ++i) step(); // past the beginning
    }
    void add(std::span<double> block) override {
        for (double& sample : block) sample += factor_ * step();
    }

  private:
    double step() { return resonators_[1](resonators_[0](noise_.next())); }
    Noise noise_;
    std::array<Resonator, 2> resonators_;
    double factor_ = 1;
};

} // namespace

double peak_of(Decibels level) { return std::numbers::sqrt2 * std::pow(10, level.value / 20); }

Decibels balanced(Frequency f, Decibels level) { return level - acoustics::a_weighting(f); }

std::unique_ptr<Part> tone(Frequency f, Decibels level) {
    auto out = std::make_unique<Sines>();
    out->also(f, peak_of(level));
    return out;
}

std::unique_ptr<Part> noise_band(Frequency centre, Decibels level) {
    return std::make_unique<Band>(centre, level);
}

std::unique_ptr<Part> guide_tone(Pitch pitch, Decibels level) {
    auto out = std::make_unique<Sines>();
    double const peak = peak_of(level);
    for (int n = 1; n <= 4; ++n) out->also(pitch.frequency() * static_cast<double>(n), peak / (n * n));
    return out;
}

std::unique_ptr<Part> click(bool first_of_bar, Decibels level) {
    auto out = std::make_unique<Sines>();
    double const peak = peak_of(level);
    double const hz = first_of_bar ? 1600 : 1100;
    out->also(hertz(hz), peak, seconds(0.012));
    out->also(hertz(2.76 * hz), peak / 3, seconds(0.006)); // as of a struck bar
    return out;
}

} // namespace vowelway::sound
