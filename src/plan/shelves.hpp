// SPDX-License-Identifier: MIT
// The inside of a PlanCache. Private to the layer.
#pragma once

#include "core/once_map.hpp"
#include "plan/landscape.hpp"
#include "vowelway/acoustics/reach_cache.hpp"
#include "vowelway/plan/means.hpp"

#include <array>

namespace vowelway::plan {

struct PlanCache::Shelves {
    acoustics::ReachCache reach;
    OnceMap<std::array<double, 8>, Landscape> landscapes; // by all that a landscape is made of

    /// Stays as long as the cache.
    Landscape const& landscape(Pitch fo, Decibels loudness, acoustics::Source const& source,
                               Frequency quarter);
};

} // namespace vowelway::plan
