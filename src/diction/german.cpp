// SPDX-License-Identifier: MIT
#include "diction/grouping.hpp"

namespace vowelway::diction {

Sounds german(Word const& word) { return synthesised(word, Language::german); }

} // namespace vowelway::diction
