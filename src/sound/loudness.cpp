// SPDX-License-Identifier: MIT
#include "vowelway/sound/loudness.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace vowelway::sound {

namespace {

constexpr std::size_t step_size = 4800; // 0.1 s
constexpr double gate = -70, top = 30, bins_per_unit = 100;
constexpr double relative_gate = -10;

// Between the eighth and the ninth of sixteen samples: a sinc in a Hann window, at a quarter, a half and
// three quarters of the way.
constexpr std::size_t span_of_samples = 16;
using Between = std::array<std::array<double, span_of_samples>, 3>;
Between const& between() {
    static Between const taps = [] {
        Between out{};
        for (std::size_t phase = 0; phase < out.size(); ++phase)
            for (std::size_t k = 0; k < span_of_samples; ++k) {
                double const pi = std::numbers::pi;
                double const x = static_cast<double>(k) - 7 - 0.25 * static_cast<double>(phase + 1);
                out[phase][k] = std::sin(pi * x) / (pi * x) * 0.5 * (1 + std::cos(pi * x / 8.5));
            }
        return out;
    }();
    return taps;
}

double lufs(double mean_square) { return -0.691 + 10 * std::log10(mean_square); }

} // namespace

double LoudnessMeter::Biquad::operator()(double x) {
    double const y = b0 * x + s1;
    s1 = b1 * x - a1 * y + s2;
    s2 = b2 * x - a2 * y;
    return y;
}

LoudnessMeter::LoudnessMeter()
    : shelf_{1.53512485958697, -2.69169618940638, 1.19839281085285, -1.69065929318241, 0.73248077421585},
      high_pass_{1, -2, 1, -1.99004745483398, 0.99007225036621},
      bins_(static_cast<std::size_t>((top - gate) * bins_per_unit) + 1) {}

void LoudnessMeter::hear(std::span<float const> samples) {
    for (float const sample : samples) {
        double const x = sample;
        look_between(x);
        double const y = high_pass_(shelf_(x));
        step_ += y * y;
        if (++in_step_ == step_size) step_done();
    }
}

void LoudnessMeter::look_between(double x) {
    peak_ = std::max(peak_, std::abs(x));
    last_[at_] = last_[at_ + span_of_samples] = x;
    at_ = (at_ + 1) % span_of_samples;
    double const* const oldest = last_.data() + at_;
    // Where both neighbours are far below the peak, so is what lies between them (up to 12 kHz).
    if (std::max(std::abs(oldest[7]), std::abs(oldest[8])) < 0.6 * peak_) return;
    for (auto const& taps : between()) {
        double sum = 0;
        for (std::size_t k = 0; k < span_of_samples; ++k) sum += taps[k] * oldest[k];
        peak_ = std::max(peak_, std::abs(sum));
    }
}

void LoudnessMeter::step_done() {
    steps_[steps_done_++ % steps_.size()] = step_;
    step_ = 0;
    in_step_ = 0;
    if (steps_done_ < steps_.size()) return;
    double energy = 0;
    for (double e : steps_) energy += e;
    energy /= static_cast<double>(steps_.size() * step_size);
    if (energy <= 0 || lufs(energy) < gate) return;
    auto const bin = static_cast<std::size_t>((std::min(lufs(energy), top) - gate) * bins_per_unit);
    bins_[bin].count += 1;
    bins_[bin].energy += energy;
}

Loudness LoudnessMeter::result() const {
    Loudness out;
    if (peak_ > 0) out.peak = {20 * std::log10(peak_)};
    if (steps_done_ < steps_.size()) { // shorter than one block
        double energy = step_;
        for (double e : steps_) energy += e;
        auto const samples = static_cast<double>(steps_done_ * step_size + in_step_);
        if (energy > 0 && lufs(energy / samples) >= gate) out.integrated = {lufs(energy / samples)};
        return out;
    }
    auto const mean_above = [&](double threshold) {
        double count = 0, energy = 0;
        for (std::size_t i = 0; i < bins_.size(); ++i) {
            if (bins_[i].count == 0 || lufs(bins_[i].energy / bins_[i].count) < threshold) continue;
            count += bins_[i].count;
            energy += bins_[i].energy;
        }
        return count > 0 ? lufs(energy / count) : -120.0;
    };
    out.integrated = {mean_above(gate)};
    if (out.integrated.value > gate) out.integrated = {mean_above(out.integrated.value + relative_gate)};
    return out;
}

Balance balance(Programme const& programme) {
    // Voices are some 70 dB loud: at this gain far above the gate that shuts at -70 LUFS.
    constexpr double trial = 2e-4;
    LoudnessMeter meter;
    play(programme, trial, [&](std::span<float const> samples) { meter.hear(samples); });
    auto const heard = meter.result();
    Balance out;
    if (heard.integrated.value <= gate) return out; // silence
    double const wished = wanted_loudness.value - heard.integrated.value;
    double const allowed = highest_peak.value - heard.peak.value - 0.1; // what other meters read more
    double const change = std::min(wished, allowed);
    out.gain = trial * std::pow(10, change / 20);
    out.held_by_peak = allowed < wished;
    out.loudness = {{heard.integrated.value + change}, {heard.peak.value + change}};
    return out;
}

} // namespace vowelway::sound
