// SPDX-License-Identifier: MIT
#include "plan/reach.hpp"

#include <algorithm>

namespace vowelway::plan {

namespace {

constexpr int step = 2; // semitones of the reachable set's own grid

// Calls `use` with the one, two or four shapes of the reachable set around a shape of the grid; false, and
// nothing called on, where one of them is out of reach.
template <class Use> bool around(acoustics::ReachableSet const& reach, int d1, int d2, Use use) {
    auto const floor_of = [](int d) { return d >= 0 ? d / step : -((-d + step - 1) / step); };
    for (int i = floor_of(d1); i * step < d1 + step; ++i)
        for (int j = floor_of(d2); j * step < d2 + step; ++j) {
            auto const* shape = reach.at(i, j);
            if (!shape) return false;
            use(*shape);
        }
    return true;
}

} // namespace

ShapeCosts efforts_of(ShapeGrid const& grid, acoustics::ReachableSet const& reach,
                      Technique const& technique) {
    ShapeCosts out(grid.size(), out_of_reach);
    for (std::size_t s = 0; s < out.size(); ++s) {
        double sum = 0;
        int count = 0;
        bool const reached = around(reach, grid.d1(s), grid.d2(s),
                                    [&](acoustics::Shape const& shape) { sum += shape.effort, ++count; });
        if (reached) out[s] = static_cast<float>(technique.effort * sum / count + technique.attention);
    }
    out[grid.home()] = 0;
    return out;
}

acoustics::GestureVector gesture_of(ShapeGrid const& grid, std::size_t shape,
                                    acoustics::ReachableSet const& reach) {
    acoustics::GestureVector sum{};
    int count = 0;
    around(reach, grid.d1(shape), grid.d2(shape), [&](acoustics::Shape const& near) {
        for (std::size_t k = 0; k < sum.size(); ++k) sum[k] += near.gesture[k];
        ++count;
    });
    for (auto& g : sum) g /= std::max(count, 1);
    return sum;
}

} // namespace vowelway::plan
