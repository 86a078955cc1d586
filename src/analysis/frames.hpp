// SPDX-License-Identifier: MIT
// A sound cut into the frames of average_spectrum. Private to the analysis layer.
#pragma once

#include "analysis/fft.hpp"
#include "vowelway/analysis/spectrum.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>
#include <vector>

namespace vowelway::analysis {

/// Hamming's, of unit energy. The last one made is kept: nearly all frames are as long.
inline std::vector<double> const& window_of(std::size_t length) {
    thread_local std::vector<double> window;
    if (window.size() == length) return window;
    window.resize(length);
    double energy = 0;
    for (std::size_t n = 0; n < length; ++n) {
        double const turn =
            2 * std::numbers::pi * (static_cast<double>(n) + 0.5) / static_cast<double>(length);
        window[n] = 0.54 - 0.46 * std::cos(turn);
        energy += window[n] * window[n];
    }
    for (auto& w : window) w /= std::sqrt(energy);
    return window;
}

/// The frames of one sound: their window, where they begin, and the transform of each.
class Frames {
  public:
    Frames(std::span<float const> samples, Frequency rate) : samples_(samples) {
        auto const wanted =
            static_cast<std::size_t>(std::lround(in_seconds(spectrum_frame) * in_hertz(rate)));
        length_ = std::max<std::size_t>(std::min(wanted, samples.size()), 2);
        hop_ = std::max<std::size_t>(length_ / 2, 1);
        padded_ = fast_length(length_ + length_ / 4);
        window_ = window_of(length_);
        buffer_.resize(padded_);
        bin_ = rate / static_cast<double>(padded_);
    }

    std::size_t count() const {
        return samples_.size() < length_ ? 1 : 1 + (samples_.size() - length_) / hop_;
    }
    PowerSpectrum empty() const { return {std::vector<double>(padded_ / 2 + 1, 0.0), bin_, 0}; }

    /// The middle of a frame, in samples.
    double middle(std::size_t frame) const {
        return static_cast<double>(frame * hop_) + 0.5 * static_cast<double>(length_);
    }

    void add_to(PowerSpectrum& sum, std::size_t frame) {
        auto const from = frame * hop_;
        for (std::size_t n = 0; n < length_; ++n)
            buffer_[n] =
                from + n < samples_.size() ? window_[n] * static_cast<double>(samples_[from + n]) : 0;
        auto const& bins = frame_fft().forward(buffer_);
        for (std::size_t k = 0; k < sum.power.size(); ++k) sum.power[k] += std::norm(bins[k]);
        ++sum.frames;
    }

  private:
    std::span<float const> samples_;
    std::size_t length_ = 0, hop_ = 0, padded_ = 0;
    Frequency bin_;
    std::vector<double> window_, buffer_;
};

/// Spectra of single frames in `blocks` successive groups, each with its average; fewer groups when there are
/// not two frames for each.
std::vector<PowerSpectrum> grouped(std::span<PowerSpectrum const> frames, int blocks);

} // namespace vowelway::analysis
