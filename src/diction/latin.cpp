// SPDX-License-Identifier: MIT
#include "diction/grouping.hpp"

namespace vowelway::diction {

Sounds latin(Word const& word) { return synthesised(word, Language::latin); }

} // namespace vowelway::diction
