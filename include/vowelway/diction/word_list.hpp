// SPDX-License-Identifier: MIT
// A teacher's own pronunciations: they win over every rule.
// Threads: a WordList that nobody adds to may be asked by any number at once.
#pragma once

#include <map>
#include <string>
#include <string_view>

namespace vowelway::diction {

/// The vowels of a word, one for each syllable, as IPA: "amore" -> "a m o r e" or "amore" or "a o e".
/// Spaces, dots and hyphens between syllables, stress marks and consonants are allowed; two vowels
/// in one syllable are written with the glide marked (◌̯, j, w) or, with syllables separated, side by side.
class WordList {
  public:
    /// Throws InputError when `ipa` holds no vowel.
    void add(std::string_view word, std::string_view ipa);
    /// Nothing when the word is not listed. Case and surrounding punctuation do not matter.
    std::string const* find(std::string_view word) const;
    std::size_t size() const { return words_.size(); }

  private:
    std::map<std::string, std::string, std::less<>> words_;
};

/// Reads `words.yaml`:
///     vowelway: 1
///     words:
///       sospiro: sospiro
///       Gethsemane: ɡɛt.sɛ.ma.nɛ
/// At most 20,000 words and 1 MiB. Throws InputError with file, line and column, also for a word twice.
WordList read_word_list(std::string const& path);
/// The same from a text; `name` is what messages call it. Its words win over those already `known`.
WordList parse_word_list(std::string const& text, std::string const& name, WordList known = {});

} // namespace vowelway::diction
