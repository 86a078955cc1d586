// SPDX-License-Identifier: MIT
// Where the lines of a poem end when only its words are known. Private to the layer.
#pragma once

#include "vowelway/core/sung_text.hpp"
#include "vowelway/diction/language.hpp"

#include <string>
#include <vector>

namespace vowelway::diction {

/// A word with what its place in the song tells.
struct PlacedWord {
    TextWord word;
    std::size_t syllables = 1;
    double rest_after = 0;  ///< seconds, before the next word
    double held = 0;        ///< seconds, of its last syllable
    bool pass_ends = false; ///< the next word belongs to another verse or pass
    std::string rhyme;      ///< its sounds from the last stressed vowel on
};

/// The sounds a word rhymes with.
std::string rhyme_of(std::string_view ipa, Language language);

/// The words in lines, the most probable ones: a line begins with a capital, ends before a rest, at a stop or
/// with a rhyme, and is about as long as the others. A long rest begins a stanza. A line that comes again at
/// once stands once.
std::vector<VerseLine> verse_lines(std::vector<PlacedWord> const& words, Language language);

/// A line that comes again at once is counted.
void fold_repeated(std::vector<VerseLine>& lines);

} // namespace vowelway::diction
