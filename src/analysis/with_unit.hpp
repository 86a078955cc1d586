// SPDX-License-Identifier: MIT
// Whole numbers as the analysis says them. Private to the layer.
#pragma once

#include <cstdio>
#include <string>

namespace vowelway::analysis {

/// "24 dB", "300 ms": rounded to whole ones.
inline std::string with_unit(double value, char const* unit) {
    char text[40];
    std::snprintf(text, sizeof text, "%.0f %s", value, unit);
    return text;
}

} // namespace vowelway::analysis
