// SPDX-License-Identifier: MIT
// Each recording has one kind of probe. Private to the analysis layer.
#pragma once

#include "vowelway/analysis/measure.hpp"

#include <optional>
#include <vector>

namespace vowelway::analysis {

/// Decides the kind of each recording, or takes the one that is forced, and refuses the takes that are of
/// another kind, or all of a recording whose kind cannot be told or contradicts the forced one.
void settle_kinds(Measurements& measurements, std::vector<Recording> const& recordings,
                  std::optional<ProbeKind> forced);

} // namespace vowelway::analysis
