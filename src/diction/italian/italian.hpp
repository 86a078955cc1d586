// SPDX-License-Identifier: MIT
// Stress and vowel quality of Italian words. Private to the layer.
#pragma once

#include "diction/words/rules.hpp"

namespace vowelway::diction {

/// The stressed letter of a word (index), and whether its e or o is open where that is known.
struct ItalianStress {
    std::optional<std::size_t> letter;
    std::optional<bool> open;
};

/// By the written accent, else the synthesiser's dictionary, mended by endings.
ItalianStress italian_stress(Word const& word);

} // namespace vowelway::diction
