// SPDX-License-Identifier: MIT
// Where a vowel may be left alone. Private to the layer.
#pragma once

#include "vowelway/plan/plan.hpp"

#include <span>
#include <vector>

namespace vowelway::plan {

/// The longest run of pitches in which the advice is not to modify; a single pitch that asks for a change
/// does not end it. `drawn`: for each draw the advice at each pitch of the strip; its scatter gives `to_sd`.
std::optional<PassiveRange> passive_range(std::vector<PitchCell> const& strip,
                                          std::span<std::vector<Advice> const> drawn);

} // namespace vowelway::plan
