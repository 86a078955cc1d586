// SPDX-License-Identifier: MIT
#include "diction/grouping.hpp"

namespace vowelway::diction {

Sounds spanish(Word const& word) { return synthesised(word, Language::spanish); }

} // namespace vowelway::diction
