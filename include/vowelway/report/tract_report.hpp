// SPDX-License-Identifier: MIT
// Solved tracts as text and JSON. The fields are told in docs/formats.md.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/acoustics/solved_tract.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace vowelway::report {

std::string tracts_text(std::vector<acoustics::SolvedTract> const& tracts);
/// `loss` as it was asked for: "closed-glottis".
std::string tracts_json(std::vector<acoustics::SolvedTract> const& tracts, std::string_view loss);

} // namespace vowelway::report
