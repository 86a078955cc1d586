// SPDX-License-Identifier: MIT
// Where each sung note sounds along a system.
#pragma once

#include "chart/engraving/score_layout.hpp"

#include <cstddef>
#include <vector>

namespace vowelway::chart {

/// A stretch of a system in which one sung note sounds.
struct Sounding {
    std::size_t note = 0;
    double from = 0, to = 0; ///< x
    double head = 0;         ///< x of the note head
    bool begins = true;      ///< false: held over from before
};

/// From left to right; each reaches to the next thing that has a place in time.
std::vector<Sounding> soundings_of(System const& system);

} // namespace vowelway::chart
