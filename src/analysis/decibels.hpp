// SPDX-License-Identifier: MIT
// Levels of powers. Private to the analysis layer.
#pragma once

#include <algorithm>
#include <cmath>

namespace vowelway::analysis {

/// Powers below the floor count as it: of what 16 bits hold, -120 dB is the noise of their last bit spread
/// over a long frame; a bin of a spectrum may be 20 to 40 dB lower.
inline constexpr double floor_of_level = 1e-12, floor_of_band = 1e-14, floor_of_bin = 1e-16;

inline double decibels(double power, double floor) { return 10 * std::log10(std::max(power, floor)); }

} // namespace vowelway::analysis
