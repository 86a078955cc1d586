// SPDX-License-Identifier: MIT
// The middle of some values. Private to the analysis layer.
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

/// The mean of the two middle ones of an even number. Of at least one.
inline double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    auto const half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
}

/// The standard deviation of a normal variable over the median of its distances from the median.
inline constexpr double sd_over_median_distance = 1.4826;

} // namespace vowelway::analysis
