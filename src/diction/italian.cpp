// SPDX-License-Identifier: MIT
#include "diction/grouping.hpp"

namespace vowelway::diction {

Sounds italian(Word const& word) { return synthesised(word, Language::italian); }

} // namespace vowelway::diction
