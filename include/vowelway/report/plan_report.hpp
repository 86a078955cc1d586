// SPDX-License-Identifier: MIT
// The plan as text, CSV and JSON. Every form reads the same values; none computes any.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/plan.hpp"

#include <string>

namespace vowelway::report {

/// Whether frequencies, deviations and the reasons with their numbers are told beside vowels, notes and
/// gestures.
enum class Numbers { left_out, shown };
/// For a terminal or a text file: notes to watch, vowels, every note, cautions.
std::string plan_text(plan::Plan const& plan, Numbers numbers = Numbers::left_out);
/// One row a note (or, without notes, one row a vowel and semitone); RFC 4180, UTF-8, header first.
std::string plan_csv(plan::Plan const& plan);
/// The stable machine form; its fields are described in docs/formats.md. Ends with a line break.
std::string plan_json(plan::Plan const& plan);

/// The cautions every output carries. Sources: docs/limits.md.
inline constexpr std::string_view voice_caution =
    "Never push and never chase a number; comfort decides. Stop when the voice is hoarse or sore; if that "
    "lasts, see a doctor. "
    "This is not medical advice and does not replace a teacher.";

} // namespace vowelway::report
