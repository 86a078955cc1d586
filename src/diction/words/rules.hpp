// SPDX-License-Identifier: MIT
// One function a language: letters in, nuclei out. Private to the layer.
#pragma once

#include "diction/words/sounds.hpp"
#include "vowelway/diction/language.hpp"

#include <vector>

namespace vowelway::diction {

using Word = std::vector<Letter>;

Sounds italian(Word const& word);
Sounds latin(Word const& word);
Sounds spanish(Word const& word);
Sounds german(Word const& word);
Sounds french(Word const& word);
/// English, of the British stage or the American.
Sounds english(Word const& word, Language stage);
/// Latin with the vowels and consonants of German.
Sounds german_latin(Word const& word);
/// Brazilian.
Sounds portuguese(Word const& word);
/// Of the north.
Sounds welsh(Word const& word);
/// Swedish, Norwegian (bokmål), Danish.
Sounds scandinavian(Word const& word, Language language);
/// Hebrew and Church Slavonic in Latin letters.
Sounds transliterated(Word const& word, Language language);
/// By the synthesiser alone.
Sounds synthesised(Word const& word, Language language);

/// The rules of the language, or the synthesiser where there are none.
Sounds sounds(Word const& word, Language language);

} // namespace vowelway::diction
