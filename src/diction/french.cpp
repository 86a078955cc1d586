// SPDX-License-Identifier: MIT
#include "diction/grouping.hpp"

namespace vowelway::diction {

Sounds french(Word const& word) { return synthesised(word, Language::french); }

} // namespace vowelway::diction
