// SPDX-License-Identifier: MIT
#include "reach.hpp"

#include <cmath>
#include <cstdlib>

namespace vowelway {

namespace {

constexpr int step = 2; // semitones of the reachable set's own grid

// The effort of a shape, or nothing where one of the shapes it lies between is out of reach.
std::optional<double> effort(ReachableSet const& reach, int d1, int d2) {
    auto const floor_of = [](int d) { return d >= 0 ? d / step : -((-d + step - 1) / step); };
    double sum = 0;
    int count = 0;
    for (int i = floor_of(d1); i * step < d1 + step; ++i)
        for (int j = floor_of(d2); j * step < d2 + step; ++j) {
            auto const* shape = reach.at(i, j);
            if (!shape) return std::nullopt;
            sum += shape->effort;
            ++count;
        }
    return sum / count;
}

} // namespace

ShapeCosts efforts_of(ShapeGrid const& grid, ReachableSet const& reach, Technique const& technique) {
    ShapeCosts out(grid.size(), out_of_reach);
    for (std::size_t s = 0; s < out.size(); ++s)
        if (auto const e = effort(reach, grid.d1(s), grid.d2(s))) out[s] = static_cast<float>(technique.effort * *e + technique.attention);
    out[grid.home()] = 0;
    return out;
}

} // namespace vowelway
