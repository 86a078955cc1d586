// SPDX-License-Identifier: MIT
// The tube of a smooth tract, and the resonances it is solved for. Private to the library.
#pragma once

#include "acoustics/tube.hpp"

#include <array>
#include <vector>

namespace vowelway::acoustics::tube {

inline constexpr int series_sections = 24, series_terms = 8;
using Series = std::array<double, series_terms>;

/// Mean (geometric) area of a tract of this length: 2.1 cm² for 17 cm, and the same shape for others.
double mean_area(double length);

/// ln A = ln A0 + sum over m = 1.. of series[m-1] cos(m pi x/L).
Tube series_tube(Series const& series, double length, TractLoss loss);

struct SeriesSolution {
    Series series{};
    double length = 17;
    Tube tube;
    std::vector<Complex> poles; // as many as there were targets
    double residual = 1;        // largest |ln F/target|
    int steps = 0;
};
/// Newton's method for 1..3 targets in Hz, by the likeliest steps from `start`; the last state reached when
/// it does not converge. With `length_sd` > 0 the length may give way too, by about that share.
SeriesSolution solve_series(std::vector<double> const& targets, Series const& start, double length,
                            double length_sd, TractLoss loss);

} // namespace vowelway::acoustics::tube
