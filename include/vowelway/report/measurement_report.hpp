// SPDX-License-Identifier: MIT
// What was measured, as text and JSON. The fields are told in docs/formats.md.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/measure.hpp"

#include <string>
#include <vector>

namespace vowelway::report {

/// For a person: the vowels, then what there is to say of each take. `files` are the recordings' names in the
/// order in which they were measured; pitches are named in `tuning`.
std::string measurement_text(analysis::Measurements const& measurements,
                             std::vector<std::string> const& files, Tuning const& tuning);
/// Why takes gave no number, a line for each; empty when all did.
std::string refusals_text(analysis::Measurements const& measurements, std::vector<std::string> const& files);
/// Takes, vowels, shifts and remarks. Ends with a line break.
std::string measurement_json(analysis::Measurements const& measurements,
                             std::vector<std::string> const& files);

} // namespace vowelway::report
