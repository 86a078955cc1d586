// SPDX-License-Identifier: MIT
// An event of the staff with the places of its heads and its stem: what all that is drawn of notes starts
// from.
#pragma once

#include "chart/engraving/score_layout.hpp"

#include <vector>

namespace vowelway::chart {

struct Stem {
    double x = 0, from = 0, to = 0;
    bool up = true;
};

struct SetEvent {
    Atom const* atom = nullptr;
    StaffEvent const* event = nullptr;
    double scale = 1;
    std::vector<int> steps = {}; ///< of the heads, low to high
    Stem stem = {};
    bool has_stem = false;
};

inline constexpr double stem_width = 0.13 * space;
inline constexpr int middle_step = 4; ///< of the middle line

/// y of a staff step.
constexpr double y_of_step(int step) { return 4 * space - step * space / 2; }

/// The events of a system, each stem as it stands without a beam.
std::vector<SetEvent> set_events(System const& system, Staff const& staff);

} // namespace vowelway::chart
