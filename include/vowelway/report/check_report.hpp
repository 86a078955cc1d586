// SPDX-License-Identifier: MIT
// New probes compared with a profile or a plan, as text and JSON. The fields are told in docs/formats.md.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/check.hpp"

#include <string>
#include <vector>

namespace vowelway::report {

/// The verdicts, what is off, the trends, and why a take gave no number. `files` as for measurement_text.
std::string check_text(analysis::Measurements const& measurements,
                       std::vector<analysis::Checked> const& checks, std::vector<std::string> const& files);
/// That of the measurement (measurement_json), with `singer` and `checks`.
std::string check_json(analysis::Measurements const& measurements,
                       std::vector<analysis::Checked> const& checks, std::vector<std::string> const& files,
                       std::string const& singer);

} // namespace vowelway::report
