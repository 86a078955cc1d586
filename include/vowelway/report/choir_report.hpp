// SPDX-License-Identifier: MIT
// The plans of all parts of a score, as one answer. Every form reads the same values; none computes any.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/choir.hpp"
#include "vowelway/report/plan_report.hpp"

#include <string>

namespace vowelway::report {

/// The JSON of docs/formats.md, "All parts".
std::string choir_json(plan::Choir const& choir);

/// The table of every part, each under its name.
std::string choir_text(plan::Choir const& choir, Numbers numbers = Numbers::left_out);

} // namespace vowelway::report
