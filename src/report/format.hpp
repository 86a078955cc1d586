// SPDX-License-Identifier: MIT
// Numbers as the reports print them: no finer than they are known. Private to the layer.
#pragma once

#include "vowelway/plan/plan.hpp"

#include <cmath>
#include <string>

namespace vowelway::report {

inline double rounded(double value, double step) {
    double const r = std::round(value / step) * step;
    return std::round(r * 1e6) / 1e6; // drops the dust of binary fractions
}

/// "12", "-1", "0.5": at most `decimals` decimals, without trailing zeros.
std::string number(double value, int decimals = 0);

/// "+1.2", "-0.5", "0.0": an interval in semitones.
std::string signed_semitones(Cents interval);

/// The pitch name with its deviation, or with "about" and no cents when the deviation is larger than half a
/// semitone.
std::string pitch_with_uncertainty(Tuning const& tuning, Pitch pitch, Cents sd);

/// "620 ±35", "620 ±35*" where the deviation is assumed: Hz, rounded.
std::string resonance(Resonance const& r);

} // namespace vowelway::report
