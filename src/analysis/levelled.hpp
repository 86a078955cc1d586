// SPDX-License-Identifier: MIT
// Has a limiter or a fast gain control evened out the level? Private to the analysis layer.
#pragma once

#include "analysis/processing.hpp"

#include <vector>

namespace vowelway::analysis {

/// The highest samples of successive frames scatter less than a mouth can make them. Pulses of a creak
/// scatter by 0.14 to 0.2 of their mean, those of a levelled one by 0.03 to 0.08; a whisper's peaks by 0.16
/// to 0.21, by 0.1 if it is as steady as a machine's, and by 0.06 to 0.07 after a limiter (synthetic:
/// bench/measure_phones.cpp). A voice is even by nature: false.
bool is_levelled(std::vector<HeardTake> const& takes, ProbeKind kind);

} // namespace vowelway::analysis
