// SPDX-License-Identifier: MIT
// Has a limiter worked on a voice? Private to the analysis layer.
#pragma once

#include "vowelway/analysis/formants.hpp"

#include <vector>

namespace vowelway::analysis {

/// The formants of one singer's takes have bandwidths near one multiple of a tract's losses. A gain that
/// falls with each pulse and recovers before the next makes some of them far narrower and others far wider.
/// Over F1 and F2 of the takes, in ln of that multiple, bench/measure_phones.cpp has a median distance from
/// the median (times 1.48) of 0.04 to 0.6 as they are and after small files, microphones and noise
/// suppression, and without the two farthest a root mean square of 0.06 to 0.42 (one of 57: 0.5); limited
/// ones 0.34 to 1.4 and 0.26 to 0.86. Both must lie above 0.65 and 0.38. A reflection that was not found does
/// the same in one of six. Fewer than four takes tell nothing: false.
bool looks_limited(std::vector<FormantReading const*> const& takes);

} // namespace vowelway::analysis
