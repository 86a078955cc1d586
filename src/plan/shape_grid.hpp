// SPDX-License-Identifier: MIT
// Shapes of the tract as departures from a vowel's own shape, in semitones of fR1 and fR2. One grid serves
// every vowel, so that the way from a shape on one vowel to a shape on the next has a length.
// Private to the layer.
#pragma once

#include <algorithm>
#include <cstddef>
#include <limits>
#include <vector>

namespace vowelway::plan {

struct ShapeGrid {
    int low1 = -6, high1 = 24; ///< semitones of fR1 away from home
    int low2 = -6, high2 = 12; ///< semitones of fR2 away from home

    int width1() const { return high1 - low1 + 1; }
    int width2() const { return high2 - low2 + 1; }
    std::size_t size() const {
        return static_cast<std::size_t>(width1()) * static_cast<std::size_t>(width2());
    }
    /// Row by row: fR1 outside, fR2 inside.
    std::size_t at(int d1, int d2) const {
        return static_cast<std::size_t>(d1 - low1) * static_cast<std::size_t>(width2()) +
               static_cast<std::size_t>(d2 - low2);
    }
    int d1(std::size_t i) const { return low1 + static_cast<int>(i) / width2(); }
    int d2(std::size_t i) const { return low2 + static_cast<int>(i) % width2(); }
    std::size_t home() const { return at(0, 0); }
};

/// One number for each shape; `out_of_reach` where no gesture leads.
using ShapeCosts = std::vector<float>;
inline constexpr float out_of_reach = 1e9f;

/// The least grid around all shapes within reach; home is among them.
inline ShapeGrid within_reach(ShapeGrid const& grid, ShapeCosts const& efforts) {
    ShapeGrid out{0, 0, 0, 0};
    for (std::size_t s = 0; s < efforts.size(); ++s) {
        if (efforts[s] >= out_of_reach) continue;
        out.low1 = std::min(out.low1, grid.d1(s)), out.high1 = std::max(out.high1, grid.d1(s));
        out.low2 = std::min(out.low2, grid.d2(s)), out.high2 = std::max(out.high2, grid.d2(s));
    }
    return out;
}
/// The least grid around both.
inline ShapeGrid around(ShapeGrid const& a, ShapeGrid const& b) {
    return {std::min(a.low1, b.low1), std::max(a.high1, b.high1), std::min(a.low2, b.low2),
            std::max(a.high2, b.high2)};
}
/// Of a grid within the one that the costs are of.
inline ShapeCosts cut_to(ShapeGrid const& grid, ShapeCosts const& costs, ShapeGrid const& of) {
    ShapeCosts out(grid.size());
    for (std::size_t s = 0; s < out.size(); ++s) out[s] = costs[of.at(grid.d1(s), grid.d2(s))];
    return out;
}

} // namespace vowelway::plan
