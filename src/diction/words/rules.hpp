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
Sounds english(Word const& word);
/// By the synthesiser alone.
Sounds synthesised(Word const& word, Language language);

/// The rules of the language, or the synthesiser where there are none.
Sounds sounds(Word const& word, Language language);

} // namespace vowelway::diction
