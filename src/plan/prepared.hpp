// SPDX-License-Identifier: MIT
// A strategy's tasks made ready for any number of draws. Private to the layer.
#pragma once

#include "plan/strategy.hpp"

#include <cstddef>
#include <utility>
#include <vector>

namespace vowelway::plan {

// What all draws share: which landscape each task lies in, and which tables of (landscape, vowel) there are.
struct Strategy::Prepared {
    std::vector<Landscape const*> lands;                          // of each task
    std::vector<std::size_t> table_of;                            // of each task
    std::vector<std::pair<Landscape const*, std::size_t>> tables; // landscape and vowel
    std::vector<CourseNote> notes;                                // all but what is heard
};

} // namespace vowelway::plan
