// SPDX-License-Identifier: MIT
// One note explained, as text and JSON; nothing here is computed by the reports. The fields are told in
// docs/formats.md.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/explain.hpp"

#include <string>

namespace vowelway::report {

std::string explanation_text(plan::NoteExplanation const& explanation);
/// Ends with a line break.
std::string explanation_json(plan::NoteExplanation const& explanation);

} // namespace vowelway::report
