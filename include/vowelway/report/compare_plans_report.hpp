// SPDX-License-Identifier: MIT
// Two plans of one song as text, CSV and JSON. The fields are told in docs/formats.md.
#pragma once

#include "vowelway/plan/compare_plans.hpp"

#include <string>

namespace vowelway {

/// The notes where the plans part, and how long each singer does what.
std::string plans_compared_text(PlansCompared const& compared);
/// One row a note; RFC 4180.
std::string plans_compared_csv(PlansCompared const& compared);
std::string plans_compared_json(PlansCompared const& compared);

} // namespace vowelway
