// SPDX-License-Identifier: MIT
// A profile's measurements with what changed, as text and JSON. The fields are told in
// docs/profile-format.md.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/history.hpp"

#include <string>
#include <vector>

namespace vowelway::report {

/// `history` as analysis::history_of gives it for the profile.
std::string history_text(Profile const& profile, std::vector<analysis::HistoryEntry> const& history);
std::string history_json(Profile const& profile, std::vector<analysis::HistoryEntry> const& history);

} // namespace vowelway::report
