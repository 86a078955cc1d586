// SPDX-License-Identifier: MIT
// Which shapes a singer reaches from a vowel, and what they take. Private to the layer.
#pragma once

#include "plan/shape_grid.hpp"
#include "vowelway/acoustics/reachable.hpp"
#include "vowelway/core/technique.hpp"

namespace vowelway::plan {

/// What every shape of the grid takes from the singer: effort and attention; out_of_reach where no gesture
/// leads. The reachable set has every second semitone; between two of its shapes the effort is their mean.
ShapeCosts efforts_of(ShapeGrid const& grid, acoustics::ReachableSet const& reach,
                      Technique const& technique);

/// The gesture that leads to a shape within reach, likewise a mean.
acoustics::GestureVector gesture_of(ShapeGrid const& grid, std::size_t shape,
                                    acoustics::ReachableSet const& reach);

} // namespace vowelway::plan
