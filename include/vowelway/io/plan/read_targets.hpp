// SPDX-License-Identifier: MIT
// The targets of a plan that was written as JSON (docs/formats.md).
#pragma once

#include "vowelway/core/plan_target.hpp"

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::io {

inline constexpr std::uintmax_t largest_plan = std::uintmax_t{64} << 20; ///< bytes
inline constexpr int deepest_plan = 32;                  ///< lists and objects within each other
inline constexpr std::size_t most_plan_values = 4000000; ///< numbers, texts, lists and objects

/// Notes of one vowel whose targets agree to 10 Hz are one; the longest sung comes first. Notes without a
/// vowel have no target; fields not needed here are not looked at. Strict: throws InputError with the file
/// and the line or the note for text that is no JSON, another version, notes that are no list, vowels that
/// are none, resonances that are no number or not within 50..6000 Hz (fR1) and 100..8000 Hz (fR2), and times
/// that are negative or over a day. Bound: 64 MiB.
std::vector<PlanTarget> read_plan_targets(std::filesystem::path const& path);
/// The same from a text; `file` is the name that messages give.
std::vector<PlanTarget> parse_plan_targets(std::string_view json, std::string const& file);

} // namespace vowelway::io
