// SPDX-License-Identifier: MIT
// The parts of a score in systems, one under another: what sounds together stands together.
#pragma once

#include "chart/engraving/score_layout.hpp"
#include "vowelway/plan/choir.hpp"

#include <cstddef>
#include <vector>

namespace vowelway::chart {

/// One system of all parts; `parts` in the order of the choir's, each placed as its own staff.
struct ChoirSystem {
    std::vector<System> parts;
    double width = 0;
};

struct AlignedScore {
    std::vector<Staff> staves; ///< of each part; engravers refer to them
    std::vector<ChoirSystem> systems;
};

/// Bars are found by their place in the score: parts of one reading have the same.
AlignedScore aligned(plan::Choir const& choir, double width, TextMeasurer const& measurer);

} // namespace vowelway::chart
