// SPDX-License-Identifier: MIT
// Singers compared, and one singer described, as text, CSV and JSON. The fields are told in
// docs/profile-format.md.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/profile.hpp"
#include "vowelway/plan/compare.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::report {

std::string comparison_text(plan::Comparison const& comparison);
/// One row a vowel and singer; RFC 4180.
std::string comparison_csv(plan::Comparison const& comparison);
std::string comparison_json(plan::Comparison const& comparison);

/// What `profile show` says: nothing here is computed by the reports.
struct SingerPicture {
    Singer singer;
    std::optional<plan::TractLength> tract;
    std::vector<plan::Placement> among; ///< nearest voice type first
    std::vector<Measurement> sources;   ///< of the vowels whose numbers come from the profile's history
    Remarks remarks;
};
std::string singer_text(SingerPicture const& picture);
std::string singer_json(SingerPicture const& picture);

} // namespace vowelway::report
