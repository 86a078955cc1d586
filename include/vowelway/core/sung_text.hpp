// SPDX-License-Identifier: MIT
// The words of a song as a poem: verse lines with the sounds of lyric diction under the words.
// Threads: plain values.
#pragma once

#include "vowelway/core/error.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace vowelway {

/// A word on a sheet of text.
struct TextWord {
    std::string written; ///< with its punctuation: "Nacht,"
    std::string name;    ///< what a word list calls it: small letters, nothing around it
    std::string ipa; ///< its sounds, stress marked before the syllable: "ˈliːbə"; empty where there are none
    std::string listed; ///< the same with its syllables apart, as a word list writes it: "ˈliː.bə"
    bool joined =
        false; ///< sung together with the next word, on one note or by a consonant that carries over
    bool guessed = false; ///< unknown or doubtful
};

struct VerseLine {
    std::vector<TextWord> words;
    bool begins_stanza = false; ///< never of the first line
    std::size_t times = 1;      ///< how often it is sung in succession
};

/// What a sign stands for, with a word of the text that has it.
struct SignMeaning {
    std::string sign, says, example;
};

struct SungText {
    std::string title, composer; ///< as far as the source says
    std::string language;        ///< BCP 47 primary tag
    std::vector<VerseLine> lines;
    bool lines_guessed = false;     ///< the lines were found, not given
    std::vector<SignMeaning> key;   ///< only of the signs that occur, vowels first
    std::vector<std::string> notes; ///< what else a reader of the sounds must know
};

} // namespace vowelway
