// SPDX-License-Identifier: MIT
// Nuclei to written syllables, and several vowels to one note. Private to the layer.
#pragma once

#include "diction/syllables/singing.hpp"

#include <string>
#include <vector>

namespace vowelway::diction {

/// The letters of a written syllable: [from, to) in the word.
struct LetterRange {
    std::size_t from = 0, to = 0;
};

struct Aligned {
    std::vector<std::optional<Nucleus>>
        syllables;             ///< one for each range; nothing where there is no vowel at all
    std::vector<bool> guessed; ///< one for each range
    std::string explanation;   ///< empty when the counts agreed or the difference is regular
};

/// In order when the counts agree. Otherwise letter by letter: a glide written in a syllable of its own
/// becomes its vowel ("glo-ri-a"), vowels written in one syllable meet on it, a written e that speech drops
/// is sung as the language sings it. Never throws.
Aligned align(std::vector<Nucleus> const& nuclei, Word const& word, std::vector<LetterRange> const& syllables,
              Language language);

/// Several vowels on one note: the stressed, else the most sonorous is held, the later of two equals; those
/// before and after it pass. French e muet falls beside another vowel.
Nucleus meet(std::vector<Nucleus> const& nuclei, Language language);

} // namespace vowelway::diction
