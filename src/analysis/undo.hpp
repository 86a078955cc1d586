// SPDX-License-Identifier: MIT
// Filters of phone and desk, and their inverse. Private to the analysis layer.
#pragma once

#include "analysis/processing.hpp"

#include <span>
#include <vector>

namespace vowelway::analysis {

/// |1 + gain e^(-iw delay)|^2.
double response(Reflection const& r, Frequency f);
/// |H|^2 of the analogue Butterworth filter, not less than -20 dB: more is not undone.
double response(LowCut const& c, Frequency f);

/// The spectrum before the processing.
PowerSpectrum undone(PowerSpectrum spectrum, Processing const& processing);
/// The samples before the processing. `before`: samples of the recording that come before `samples`.
std::vector<float> undone(std::span<float const> samples, Frequency rate, Processing const& processing);

} // namespace vowelway::analysis
