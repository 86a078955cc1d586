// SPDX-License-Identifier: MIT
// A lesson as text and JSON; nothing here is computed by the reports. The fields are told in docs/formats.md.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/lesson.hpp"

#include <string>

namespace vowelway::report {

/// For a terminal or a text file, in the order it is worked through.
std::string lesson_text(plan::Lesson const& lesson);
/// Ends with a line break.
std::string lesson_json(plan::Lesson const& lesson);

} // namespace vowelway::report
