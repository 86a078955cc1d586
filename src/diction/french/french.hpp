// SPDX-License-Identifier: MIT
// French vowels from the spelling alone. Private to the layer.
#pragma once

#include "diction/words/rules.hpp"

namespace vowelway::diction {

/// The last e of a word gives no nucleus. A word that ends in -ent without m before it is taken for a verb.
Sounds french_by_spelling(Word const& word);

} // namespace vowelway::diction
