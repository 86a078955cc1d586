// SPDX-License-Identifier: MIT
// The middle one of some values. Private to the analysis layer.
#pragma once

#include <algorithm>
#include <vector>

namespace vowelway::analysis {

/// The upper of the two middle ones of an even number; 0 of none.
inline double upper_median(std::vector<double> values) {
    if (values.empty()) return 0;
    auto const middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

} // namespace vowelway::analysis
