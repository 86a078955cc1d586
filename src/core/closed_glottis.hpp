// SPDX-License-Identifier: MIT
// The losses of a tract whose glottis is closed. Private to the library.
#pragma once

#include "vowelway/core/units.hpp"

#include <cmath>

namespace vowelway {

/// Half-power bandwidth of a resonance at `centre` by the losses at walls, radiation and friction: no tract
/// has less (G. Fant, STL-QPSR 13 (2-3), 1972, 28; from memory).
inline Frequency closed_glottis_bandwidth(Frequency centre) {
    double const f = in_hertz(centre);
    return hertz(15 * std::pow(500 / f, 2) + 20 * std::sqrt(f / 500) + 5 * std::pow(f / 500, 2));
}

} // namespace vowelway
