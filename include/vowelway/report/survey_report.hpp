// SPDX-License-Identifier: MIT
// A survey as text, CSV and JSON.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/overview.hpp"

#include <string>
#include <vector>

namespace vowelway::report {

/// Songs by singers: the key that suits best and what speaks against it even so; the least needy song first.
std::string survey_text(plan::Overview const& overview);
/// What suits one singer, the best first. Throws InputError where the survey has no singer of that name.
std::string suits_text(plan::Overview const& overview, std::string const& singer);
/// Songs like one of them.
std::string likeness_text(std::string const& song, std::vector<plan::Likeness> const& others);

/// One row a record, all figures, in the order of the records.
std::string survey_csv(std::vector<plan::PlanRecord> const& records);
/// The overview; ends with a line break.
std::string survey_json(plan::Overview const& overview);

} // namespace vowelway::report
