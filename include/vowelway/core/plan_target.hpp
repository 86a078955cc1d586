// SPDX-License-Identifier: MIT
// A target of an earlier plan: what a singer set out to do, to compare new probes with.
#pragma once

#include "vowelway/core/units.hpp"
#include "vowelway/core/vowel.hpp"

#include <string>
#include <vector>

namespace vowelway {

/// All notes of one vowel with one target; resonances to 10 Hz, nearer than anyone sings them.
struct PlanTarget {
    Vowel vowel;       ///< its quality, as written
    std::string shade; ///< IPA of what to aim at
    Frequency r1, r2;
    Duration sung;                 ///< on it, in the passage
    std::vector<std::string> bars; ///< in which it is, in order
};

} // namespace vowelway
