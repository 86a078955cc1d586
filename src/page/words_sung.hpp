// SPDX-License-Identifier: MIT
// The words of a passage, as diction joins them from their syllables.
#pragma once

#include "vowelway/core/passage.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace vowelway::page {

struct WordSung {
    std::string text;               ///< in small letters, without punctuation
    std::vector<std::size_t> notes; ///< on which its syllables begin
};
std::vector<WordSung> words_sung(Passage const& passage);

} // namespace vowelway::page
