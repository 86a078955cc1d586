// SPDX-License-Identifier: MIT
// The measurements of a profile, vowel by vowel, with what changed.
#pragma once

#include "vowelway/core/units.hpp"
#include "vowelway/io/profile/measurement.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::cli {

/// From one measurement of a vowel to the next.
struct Change {
    Cents r1, r2;                            ///< upward
    Cents r1_sd, r2_sd;                      ///< of that interval: both deviations, as variances
    bool r1_clear = false, r2_clear = false; ///< more than two of these deviations
};

struct HistoryEntry {
    io::Measurement measurement;
    std::optional<Change> change; ///< against the entry before it of the same vowel
};

/// Ordered along the rim of the vowel chart; within a vowel by day, then as in the file (entries without a
/// day first). Only the vowels given, or all when none are.
std::vector<HistoryEntry> history_of(io::Profile const& profile, std::vector<Vowel> const& only);

std::string history_text(io::Profile const& profile, std::vector<HistoryEntry> const& history);
std::string history_json(io::Profile const& profile, std::vector<HistoryEntry> const& history);

} // namespace vowelway::cli
