// SPDX-License-Identifier: MIT
// What charts draw on. Lengths are in points (1/72 inch), y grows downwards.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::chart {

struct Point {
    double x = 0, y = 0;
};
struct Box {
    double left = 0, top = 0, width = 0, height = 0;
    double right() const { return left + width; }
    double bottom() const { return top + height; }
};
struct Size {
    double width = 0, height = 0;
};

} // namespace vowelway::chart
