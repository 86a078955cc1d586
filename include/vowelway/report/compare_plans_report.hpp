// SPDX-License-Identifier: MIT
// Two plans of one song as text, CSV and JSON. The fields are told in docs/formats.md.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/compare_plans.hpp"

#include <string>

namespace vowelway::report {

/// The notes where the plans part, and how long each singer does what.
std::string plans_compared_text(plan::PlansCompared const& compared);
/// One row a note; RFC 4180.
std::string plans_compared_csv(plan::PlansCompared const& compared);
std::string plans_compared_json(plan::PlansCompared const& compared);

} // namespace vowelway::report
