// SPDX-License-Identifier: MIT
#include "vowelway/sound/voice.hpp"

#include "sound/harmonics.hpp"
#include "sound/noise.hpp"
#include "vowelway/acoustics/transfer.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <complex>
#include <cstddef>
#include <numbers>
#include <vector>

namespace vowelway::sound {

namespace {

constexpr std::size_t span_size = 240; // 5 ms between two moments
constexpr double two_pi = 2 * std::numbers::pi;

constexpr auto ramp = [] {
    std::array<float, span_size> numbers{};
    for (std::size_t i = 0; i < span_size; ++i) numbers[i] = static_cast<float>(i);
    return numbers;
}();

class Sung : public Part {
  public:
    Sung(Voice const& voice, Course course)
        : voice_(voice), course_(std::move(course)), harmonics_(voice), noise_(1) {
        take(to_, to_fo_, to_size_, to_gain_);
    }

    void add(std::span<double> block) override {
        for (double& sample : block) {
            if (at_ == span_size) next_span();
            sample += static_cast<double>(ready_[at_++]);
        }
    }

  private:
    using Peaks = std::vector<std::complex<double>>;

    void take(Peaks& peaks, double& fo, double& size, double& gain) {
        auto const moment =
            course_(seconds(static_cast<double>(taken_++ * span_size) / in_hertz(sample_rate)));
        fo = in_hertz(moment.pitch.frequency());
        size = moment.size;
        shape_ = acoustics::resonance_set(moment.r1, moment.r2, voice_.quarter);
        if (size <= 0) { // silence needs no spectrum
            peaks.clear();
            gain = 0;
            return;
        }
        harmonics_.of(moment, peaks);
        for (auto& p : peaks) p *= size;
        gain = harmonics_.noise_gain() * size;
    }

    void next_span() {
        std::swap(from_, to_);
        std::swap(from_fo_, to_fo_);
        std::swap(from_gain_, to_gain_);
        take(to_, to_fo_, to_size_, to_gain_);
        at_ = 0;
        ready_.fill(0);
        turn();
        auto const count = std::max(from_.size(), to_.size());
        from_.resize(count);
        to_.resize(count);
        if (count > 0) voiced();
        if (voice_.breathy && from_gain_ + to_gain_ > 0) breath();
    }

    // The phase of the fundamental over the span: its frequency goes straight from one moment to the next. A
    // product of turns, each a little further than the last, begun anew from the exact phase.
    void turn() {
        double const per_sample = two_pi / in_hertz(sample_rate);
        double const step = from_fo_ * per_sample;
        double const change = (to_fo_ - from_fo_) * per_sample / static_cast<double>(span_size);
        auto now = std::polar(1.0, phase_);
        auto turn = std::polar(1.0, step + change / 2);
        auto const more = std::polar(1.0, change);
        for (std::size_t i = 0; i < span_size; ++i) {
            re_[i] = static_cast<float>(now.real());
            im_[i] = static_cast<float>(now.imag());
            now = times(now, turn);
            turn = times(turn, more);
        }
        double const n = static_cast<double>(span_size);
        phase_ = std::remainder(phase_ + n * step + n * n * change / 2, two_pi);
    }

    static std::complex<double> times(std::complex<double> a, std::complex<double> b) {
        return {a.real() * b.real() - a.imag() * b.imag(), a.real() * b.imag() + a.imag() * b.real()};
    }

    // The sum of all harmonics, Re c z^n: c goes straight from one moment to the next. Single precision
    // leaves errors 110 dB below the sound, and four samples are worked on at once.
    void voiced() {
        std::array<float, span_size> power_re = re_, power_im = im_;
        for (std::size_t h = 0; h < from_.size(); ++h) {
            auto const c = from_[h];
            auto const d = (to_[h] - from_[h]) / static_cast<double>(span_size);
            float const cr = static_cast<float>(c.real()), ci = static_cast<float>(c.imag());
            float const dr = static_cast<float>(d.real()), di = static_cast<float>(d.imag());
            float const* const t = ramp.data();
            float const* const zr = re_.data();
            float const* const zi = im_.data();
            float* const pr = power_re.data();
            float* const pi = power_im.data();
            float* const out = ready_.data();
            for (std::size_t i = 0; i < span_size; ++i) {
                float const r = pr[i], m = pi[i];
                out[i] += (cr + t[i] * dr) * r - (ci + t[i] * di) * m;
                pr[i] = r * zr[i] - m * zi[i];
                pi[i] = r * zi[i] + m * zr[i];
            }
        }
    }

    // Noise through the same shape, stronger while the folds are open.
    void breath() {
        for (std::size_t k = 0; k < 4; ++k)
            resonators_[k].tune(in_hertz(shape_.peaks[k].centre),
                                in_hertz(voice_.blur.widened(shape_.peaks[k])));
        for (std::size_t i = 0; i < span_size; ++i) {
            double const share = static_cast<double>(i) / static_cast<double>(span_size);
            double const gain = from_gain_ + (to_gain_ - from_gain_) * share;
            double y = noise_.next() * gain * (1 + 0.6 * static_cast<double>(re_[i])) / std::sqrt(1.18);
            for (auto& r : resonators_) y = r(y);
            ready_[i] += static_cast<float>(y - last_);
            last_ = y;
        }
    }

    Voice voice_;
    Course course_;
    Harmonics harmonics_;
    acoustics::ResonanceSet shape_;
    Peaks from_, to_;
    double from_fo_ = 0, to_fo_ = 0, to_size_ = 0, from_gain_ = 0, to_gain_ = 0;
    double phase_ = 0;
    std::size_t taken_ = 0, at_ = span_size;
    std::array<float, span_size> ready_{}, re_{}, im_{};
    Noise noise_;
    std::array<Resonator, 4> resonators_;
    double last_ = 0;
};

} // namespace

std::unique_ptr<Part> sung(Voice const& voice, Course course) {
    return std::make_unique<Sung>(voice, std::move(course));
}

Cents swing(Vibrato const& vibrato, Duration since_onset, Duration now) {
    double const share = std::clamp((in_seconds(since_onset) - 0.15) / 0.35, 0.0, 1.0);
    double const grown = share * share * (3 - 2 * share);
    return vibrato.extent * (grown * std::sin(two_pi * in_hertz(vibrato.rate) * in_seconds(now)));
}

Course steady(Moment const& moment, Vibrato const& vibrato) {
    return [=](Duration t) {
        auto out = moment;
        if (vibrato.extent.value != 0) out.pitch = moment.pitch + swing(vibrato, t, t);
        return out;
    };
}

} // namespace vowelway::sound
