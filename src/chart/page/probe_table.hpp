// SPDX-License-Identifier: MIT
// The table under a map of probes: verdicts of a check, else the resonances measured.
#pragma once

#include "vowelway/chart/draw_probes.hpp"

namespace vowelway::chart {

/// From y = `y` downwards; returns how far down it went.
double draw_probe_table(Canvas& canvas, ProbeMap const& probes, double y, double width);

} // namespace vowelway::chart
