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

namespace {

// How much more it costs to lower fR1 than to raise it as far: singers open toward a harmonic, they do not
// close down on it. A choice.
constexpr double closing_down = 2.5;
// What each semitone by which fR2 falls adds to it while fR1 rises: measured, fR2 rises with fR1 (Joliveau,
// Smith & Wolfe 2004). A choice.
constexpr double darkening = 4;

// Drawing the tongue back is never the way on top: what its whole travel costs beside the gesture. A choice.
double drawn_back(acoustics::Shape const& shape) {
    return 3 * std::max(0.0,
                        -shape.gesture[static_cast<std::size_t>(acoustics::GesturePart::tongue_advancement)]);
}

// The singer's formant: fR3 to fR5 come together where the larynx is low and the pharynx wide (Sundberg
// 1974).
double worth_of(acoustics::Shape const& shape, Technique const& technique) {
    if (technique.cluster == 0 || technique.effort == 0) return 0;
    auto const part = [&](acoustics::GesturePart p) { return shape.gesture[static_cast<std::size_t>(p)]; };
    return technique.cluster / technique.effort *
           (part(acoustics::GesturePart::pharynx) - part(acoustics::GesturePart::larynx)) / 2;
}

} // namespace

ShapeCosts efforts_of(ShapeGrid const& grid, acoustics::ReachableSet const& reach,
                      Technique const& technique) {
    ShapeCosts out(grid.size(), out_of_reach);
    auto const& own = reach.home().resonances;
    bool const back = own.r2() < 3.2 * own.r1(); // /a ɔ o u/: the front ones give way in fR2 by themselves
    for (std::size_t s = 0; s < out.size(); ++s) {
        double sum = 0;
        int count = 0;
        bool const reached = around(reach, grid.d1(s), grid.d2(s), [&](acoustics::Shape const& shape) {
            sum += shape.effort + drawn_back(shape) - worth_of(shape, technique), ++count;
        });
        double const way = grid.d1(s) < 0                             ? closing_down
                           : back && grid.d1(s) > 0 && grid.d2(s) < 0 ? 1 - darkening * grid.d2(s)
                                                                      : 1;
        if (reached) out[s] = static_cast<float>(technique.effort * way * sum / count);
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
