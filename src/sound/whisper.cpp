// SPDX-License-Identifier: MIT
#include "vowelway/sound/whisper.hpp"

#include "sound/noise.hpp"
#include "vowelway/acoustics/scales.hpp"

#include <unsupported/Eigen/FFT>

#include <algorithm>
#include <cmath>
#include <complex>
#include <cstddef>
#include <numbers>
#include <vector>

namespace vowelway::sound {

namespace {

constexpr std::size_t taps = 2048, transform = 8192, hop = transform - taps;
constexpr double from_hz = 60, whole_to_hz = 6000, to_hz = 7000;

using Bins = std::vector<std::complex<double>>;

// Gain at `hz`, up to a constant.
double gain(Whispered const& w, double hz) {
    if (hz < from_hz || hz >= to_hz) return 0;
    auto const level =
        acoustics::whispered_level(w.tract, hertz(hz), acoustics::whispering_glottis, w.place) +
        w.slope * std::log2(hz / 1000);
    double const edge = hz <= whole_to_hz ? 1 : (to_hz - hz) / (to_hz - whole_to_hz);
    return std::pow(10, level.value / 20) * edge;
}

// Noise through a filter, a stretch at a time (overlap and add).
class Filtered : public Part {
  public:
    Filtered(Whispered const& whispered, Decibels level) : noise_(2), sum_(transform, 0.0) {
        fft_.SetFlag(Eigen::FFT<double>::HalfSpectrum);
        design(whispered, level);
        stretch();
        at_ = taps; // past the beginning
    }

    void add(std::span<double> block) override {
        for (double& sample : block) {
            if (at_ == hop) stretch();
            sample += sum_[at_++];
        }
    }

  private:
    // The gains on a grid of `taps` become taps, even about their middle; a window ends them softly.
    void design(Whispered const& whispered, Decibels level) {
        double const step = in_hertz(sample_rate) / static_cast<double>(taps);
        Bins half(taps / 2 + 1);
        for (std::size_t k = 1; k < half.size(); ++k)
            half[k] = gain(whispered, step * static_cast<double>(k));
        std::vector<double> even(taps);
        fft_.inv(even, half, static_cast<Eigen::Index>(taps));
        std::vector<double> filter(transform, 0.0);
        for (std::size_t i = 0; i < taps; ++i) {
            double const turn =
                2 * std::numbers::pi * (static_cast<double>(i) + 0.5) / static_cast<double>(taps);
            filter[i] = even[(i + taps / 2) % taps] * 0.5 * (1 - std::cos(turn));
        }
        fft_.fwd(response_, filter);
        double power = 0; // A-weighted, of even noise of mean square 1
        for (std::size_t k = 1; k < response_.size() - 1; ++k) {
            auto const f = sample_rate * (static_cast<double>(k) / static_cast<double>(transform));
            power += 2 * std::norm(response_[k]) * std::pow(10, acoustics::a_weighting(f).value / 10);
        }
        power /= static_cast<double>(transform);
        double const factor = std::pow(10, level.value / 20) / std::sqrt(power);
        for (auto& bin : response_) bin *= factor;
    }

    void stretch() {
        std::vector<double> samples(transform, 0.0);
        for (std::size_t i = 0; i < hop; ++i) samples[i] = noise_.next();
        Bins bins;
        fft_.fwd(bins, samples);
        for (std::size_t k = 0; k < bins.size(); ++k) bins[k] *= response_[k];
        fft_.inv(samples, bins, static_cast<Eigen::Index>(transform));
        std::copy(sum_.begin() + hop, sum_.end(), sum_.begin());
        std::fill(sum_.begin() + taps, sum_.end(), 0.0);
        for (std::size_t i = 0; i < transform; ++i) sum_[i] += samples[i];
        at_ = 0;
    }

    Noise noise_;
    Eigen::FFT<double> fft_;
    Bins response_;
    std::vector<double> sum_;
    std::size_t at_ = 0;
};

} // namespace

std::unique_ptr<Part> whisper(Whispered const& whispered, Decibels level) {
    return std::make_unique<Filtered>(whispered, level);
}

VowelResonances whispered_resonances(VowelResonances const& sung) {
    constexpr double close_shift = 90, shift[] = {255, 115, 125};
    auto out = sung;
    bool const close = chart_place(sung.vowel).height <= 1;
    out.r1.centre += hertz(close ? close_shift : shift[0]);
    out.r2.centre += hertz(shift[1]);
    if (out.r3) out.r3->centre += hertz(shift[2]);
    // A shift may not carry a resonance past the next one, nor so near that the ear takes them for one.
    out.r1.centre = std::min(out.r1.centre, 0.85 * out.r2.centre);
    if (out.r3) out.r3->centre = std::max(out.r3->centre, 1.1 * out.r2.centre);
    if (out.r3 && out.r4) out.r4->centre = std::max(out.r4->centre, 1.1 * out.r3->centre);
    return out;
}

} // namespace vowelway::sound
