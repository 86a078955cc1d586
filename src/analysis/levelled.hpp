// SPDX-License-Identifier: MIT
// Has a limiter or a fast gain control evened out the level? Private to the analysis layer.
#pragma once

#include "analysis/processing.hpp"

#include <vector>

namespace vowelway::analysis {

/// The highest samples of successive frames scatter less than a mouth can make them. Pulses of a creak
/// scatter by 0.14 to 0.2 of their mean, those of a levelled one by 0.03 to 0.08; a whisper's peaks by 0.16
/// to 0.21, by 0.1 if it is as steady as a machine's, and by 0.06 to 0.07 after a limiter (synthetic:
/// bench/measure_phones.cpp). A fast gain control leaves 0.07 to 0.12 and makes noise less peaked than
/// Gaussian noise is (resonators 2.72 to 2.89, whole tracts 2.88 to 3.03; as it comes from a mouth 3.06 to
/// 3.64). Between 2.90 and 3.04 it may as well be breath as even as a machine's, which nobody has: like a
/// levelled one, and said to be no more than that. A voice is even by nature, and a limiter leaves no trace
/// in it that it may not have of itself (peaks within a take scatter by 0.008 to 0.1, limited by 0.005 to
/// 0.024; between takes by 0.05 to 0.4, limited by 0.02 to 0.27): natural; limited_voice.hpp looks at it.
Evenness evenness_of(std::vector<HeardTake> const& takes, ProbeKind kind);

} // namespace vowelway::analysis
