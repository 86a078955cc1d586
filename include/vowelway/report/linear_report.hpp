// SPDX-License-Identifier: MIT
// The plan for ears and fingers: lines in reading order, for a screen reader or a braille display.
// Threads: plain values; the function keeps nothing between calls.
#pragma once

#include "vowelway/plan/plan.hpp"

#include <string>

namespace vowelway::report {

/// Who and what; what there is to do; each vowel; each phrase with its words and what is to be done in it;
/// the caution. One thing a line, no columns; pitches in words ("D flat 5"), a vowel's letter with its
/// X-SAMPA.
std::string plan_linear(plan::Plan const& plan);

} // namespace vowelway::report
