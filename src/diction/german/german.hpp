// SPDX-License-Identifier: MIT
// Spelling and compounds of German. Private to the layer.
#pragma once

#include "diction/words/rules.hpp"

#include <string>

namespace vowelway::diction {

/// One byte for each letter; ä ö ü ß as A O U S, others as '?'.
std::string german_letters(Word const& word);

/// Where the last part of a compound begins: a known word, perhaps inflected, after three letters with a
/// vowel. Of several places the first with a known word on both sides, else the first. 0: none.
std::size_t german_joint(std::string const& letters);

} // namespace vowelway::diction
