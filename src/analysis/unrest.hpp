// SPDX-License-Identifier: MIT
// A pause: its spectrum, and how restless its noise is. Private to the analysis layer.
#pragma once

#include "vowelway/analysis/spectrum.hpp"

#include <span>

namespace vowelway::analysis {

struct HeardPause {
    PowerSpectrum spectrum; ///< average_spectrum
    /// How the power of a bin between 250 and 4000 Hz changes from frame to frame: ln of its arithmetic over
    /// its geometric mean, the mean over the bins; 0.58 (Euler's constant) for even Gaussian noise in many
    /// frames. Noise suppression lets bins through and shuts them out by turns: 1 and more. 0 for less than
    /// six frames.
    double unrest = 0;
};

HeardPause pause_of(std::span<float const> samples, Frequency rate);

} // namespace vowelway::analysis
