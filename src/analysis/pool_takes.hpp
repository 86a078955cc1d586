// SPDX-License-Identifier: MIT
// Several takes of one vowel together. Private to the analysis layer.
#pragma once

#include "vowelway/analysis/measure.hpp"

#include <vector>

namespace vowelway::analysis {

/// Weighted mean of each formant over the takes, the scatter between takes joined to that within (the method
/// of moments: R. DerSimonian & N. Laird, Control. Clin. Trials 7, 1986, 177). At least one take, all usable.
/// A take whose formant lies more than 15 % from the median of three or more is left out of that formant.
MeasuredVowel pool_takes(std::vector<Take const*> const& takes);

} // namespace vowelway::analysis
