// SPDX-License-Identifier: MIT
// Sound as samples, and its average power spectrum.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/units.hpp"

#include <span>
#include <vector>

namespace vowelway::analysis {

/// A piece of a recording held in memory. Samples -1..1, mono.
struct Sound {
    std::vector<float> samples;
    Frequency rate;
    Duration start; ///< of the first sample, in the recording

    Duration length() const { return static_cast<double>(samples.size()) / rate; }
};
/// The samples from `start` to `end`, both in the recording's time; what lies outside is left out.
std::span<float const> part(Sound const& sound, Duration start, Duration end);

/// Mean squared magnitude over frames, one value for each bin from 0 to half the sampling rate.
/// The scale is that of the mean square of the samples, spread evenly over the bins for white noise.
struct PowerSpectrum {
    std::vector<double> power;
    Frequency bin;  ///< distance of two values
    int frames = 0; ///< averaged; they overlap by half

    Frequency top() const { return bin * static_cast<double>(power.size() - 1); }
    /// Mean power of the values from `low` to `high`; 0 when there is none.
    double mean(Frequency low, Frequency high) const;
};

/// Welch's average over Hamming frames of 40 ms, half overlapping, padded with zeros by a quarter
/// so that the first 10 ms of the autocorrelation that follows are not folded (P. D. Welch, IEEE Trans. Audio
/// Electroacoust. 15, 1967, 70). One frame at least: a shorter sound gets a frame of its own length.
PowerSpectrum average_spectrum(std::span<float const> samples, Frequency rate);

/// The frames of average_spectrum in `blocks` successive groups, each with its own average. Fewer groups
/// when there are not two frames for each.
std::vector<PowerSpectrum> block_spectra(std::span<float const> samples, Frequency rate, int blocks);

/// So many blocks show the scatter within a steady sound.
inline constexpr int steady_blocks = 8;

/// The average of spectra of the same shape, weighted by their frames.
PowerSpectrum pooled(std::span<PowerSpectrum const> spectra);

inline constexpr Duration spectrum_frame = seconds(0.040);

} // namespace vowelway::analysis
