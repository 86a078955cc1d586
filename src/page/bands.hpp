// SPDX-License-Identifier: MIT
// A page cut into bands, one below the other, where no ink is cut: a browser draws them one at a time, and
// draws anew only those that changed.
#pragma once

#include "vowelway/chart/drawing.hpp"

#include <vector>

namespace vowelway::page {

struct Band {
    double top = 0, height = 0; ///< on the page, in points
    chart::Drawing drawing;     ///< its top is at y = 0
};

/// Together they are the page; ink below its foot is left out. A band is cut a point above the ink of the
/// next one, so that what lies in it does not depend on what stands above.
std::vector<Band> bands_of(chart::Page const& page);

} // namespace vowelway::page
