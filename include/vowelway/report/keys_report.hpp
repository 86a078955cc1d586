// SPDX-License-Identifier: MIT
// A song in every key, for one singer or several, as text, CSV and JSON.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/keys.hpp"

#include <string>
#include <vector>

namespace vowelway::report {

/// For a terminal: for each singer the key to take and why, and every key in a table; for several the key
/// they share.
std::string keys_text(std::vector<plan::KeysPlan> const& singers);
/// One row for each singer and key.
std::string keys_csv(std::vector<plan::KeysPlan> const& singers);
/// Ends with a line break. docs/formats.md.
std::string keys_json(std::vector<plan::KeysPlan> const& singers);

/// "2 semitones lower (B♭3..E5). Against it as written: lies high, vowels lost. As good: a semitone lower."
std::string key_sentence(plan::KeysPlan const& keys);

} // namespace vowelway::report
