// SPDX-License-Identifier: MIT
// What a student is to do, to be read in a terminal.
// Threads: plain values; the function keeps nothing between calls.
#pragma once

#include "vowelway/analysis/recording_card.hpp"

#include <string>

namespace vowelway::report {

/// Points begin with "- ". Lines of at most 80 letters, unless a word is longer.
std::string recording_card_text(analysis::RecordingCard const& card);

} // namespace vowelway::report
