// SPDX-License-Identifier: MIT
// Words as they are sung, as text and JSON. The fields are told in docs/formats.md.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/sung_word.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace vowelway::report {

/// A row a word: its syllables, what is sung on them, and what was guessed.
std::string words_text(std::vector<SungWord> const& words);
/// `language` is a BCP 47 tag. One word a line.
std::string words_json(std::vector<SungWord> const& words, std::string_view language);

} // namespace vowelway::report
