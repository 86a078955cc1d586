// SPDX-License-Identifier: MIT
// A short sound at another rate, exactly band-limited. Private to the analysis layer.
#pragma once

#include "vowelway/core/units.hpp"

#include <span>
#include <vector>

namespace vowelway {

struct Resampled {
    std::vector<double> samples;
    Frequency rate; ///< as near to the one asked for as the lengths of the transforms allow (0.5 %)
};

/// By the Fourier transform: what lies above half the new rate is cut off. `rate` may be higher or lower.
Resampled resample(std::span<float const> samples, Frequency from, Frequency rate);

} // namespace vowelway
