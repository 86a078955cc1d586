// SPDX-License-Identifier: MIT
// A word sung: its nuclei with the letters of their syllables. Private to the layer.
#pragma once

#include "diction/words/rules.hpp"
#include "vowelway/diction/sing_words.hpp"

namespace vowelway::diction {

/// The nuclei of a word: the word list first, then hyphenated parts by the rules of the language.
struct Reading {
    Word letters;
    Sounds sounds;
    VowelOrigin origin = VowelOrigin::rule;
};
Reading read_word(std::string_view word, Language language, DictionOptions const& options);

/// What the singer does with a nucleus: the vowel held, with the colour of sung speech.
SungVowel sung(Nucleus const& nucleus, Language language, DictionOptions const& options, VowelOrigin origin);

SungWord sing(std::string_view word, Language language, DictionOptions const& options);

} // namespace vowelway::diction
