// SPDX-License-Identifier: MIT
// The parts of a plan's text: a choir has many tables under one key and one caution.
#pragma once

#include "vowelway/report/plan_report.hpp"

#include <string>

namespace vowelway::report {

/// Heading, notes to watch, vowels, notes.
std::string plan_tables(plan::Plan const& plan, Numbers numbers);

/// What "leave it alone", "zone" and "advice" mean; ends with a line break.
std::string plan_key();

} // namespace vowelway::report
