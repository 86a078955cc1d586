// SPDX-License-Identifier: MIT
// A sheet of text in forms to hand on: plain text, a page for a browser, JSON, and a list to correct.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/sung_text.hpp"
#include "vowelway/core/sung_word.hpp"

#include <string>
#include <vector>

namespace vowelway::report {

/// Each line of the poem with its sounds under the words, then the signs. At most 96 columns.
std::string sung_text_plain(SungText const& text);
/// One HTML file that needs no other.
std::string sung_text_html(SungText const& text);
/// The words as words_json() gives them, and the sheet (docs/formats.md).
std::string sung_text_json(SungText const& text, std::vector<SungWord> const& words);
/// Every word once with its sounds, as a word list (diction/word_list.hpp) to be corrected; guesses first.
std::string word_list_to_correct(SungText const& text);

} // namespace vowelway::report
