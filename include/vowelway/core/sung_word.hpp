// SPDX-License-Identifier: MIT
// A written word as it is sung.
#pragma once

#include "vowelway/core/passage.hpp"

#include <string>
#include <vector>

namespace vowelway {

/// One syllable of a sung word.
struct SungSyllable {
    std::string text;      ///< its letters: "dol"
    SungVowel vowel;       ///< as sung
    std::string ipa;       ///< the nucleus in dictionary notation: "o", "au̯", "əʊ̯", "ɑ̃"
    bool stressed = false; ///< main stress, where the transcription knows it
    bool optional = false; ///< French final e muet: a syllable only where the score sets one
};

struct SungWord {
    std::string word; ///< as written, without surrounding punctuation
    std::vector<SungSyllable> syllables;
    bool guessed = false; ///< unknown or doubtful: `doubt` says why
    std::string doubt;
};

} // namespace vowelway
