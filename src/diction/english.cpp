// SPDX-License-Identifier: MIT
#include "diction/grouping.hpp"

namespace vowelway::diction {

Sounds english(Word const& word) { return synthesised(word, Language::english); }

} // namespace vowelway::diction
