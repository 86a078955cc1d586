// SPDX-License-Identifier: MIT
// What takes of two kinds teach of the singer's own shift. Private to the analysis layer.
#pragma once

#include "vowelway/analysis/measure.hpp"

#include <string>
#include <vector>

namespace vowelway::analysis {

/// A vowel teaches when both its probes hold a take from a recording that has not taught yet
/// (MeasureRequest::taught: digests). So it does when it is probed now in a way in which it never was, and
/// was earlier in another: once, so that no earlier probe counts twice. Sets the shifts, what was learned
/// from, and a remark.
void learn_from_takes(Measurements& measurements, std::vector<Recording> const& recordings,
                      MeasureRequest const& request);

} // namespace vowelway::analysis
