// SPDX-License-Identifier: MIT
// New probes against all that is known of a singer: the profile, its history and the targets of a plan.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/check.hpp"
#include "vowelway/core/plan_target.hpp"
#include "vowelway/core/profile.hpp"

#include <string>
#include <vector>

namespace vowelway::analysis {

/// Each measured vowel against the profile (sound with sound where it has a probe of the same kind) and
/// against each target of that vowel. A target counts as hit within 3 %: no one hits it nearer. `date`, an
/// ISO 8601 day or empty, puts these probes into the trend over the history. A vowel that the profile lacks
/// is a remark.
std::vector<Checked> check_all(Measurements const& measurements, Profile const& profile,
                               std::vector<PlanTarget> const& targets, std::string const& date,
                               Remarks& remarks);

} // namespace vowelway::analysis
