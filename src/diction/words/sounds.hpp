// SPDX-License-Identifier: MIT
// What a transcription is inside the layer: nuclei that know the letters they come from.
#pragma once

#include "diction/words/letters.hpp"
#include "vowelway/core/vowel.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::diction {

/// A vowel or glide and the letter (index in the word) it is written with.
struct Sound {
    Vowel vowel;
    std::size_t letter = 0;
};

struct Nucleus {
    std::vector<Sound> before; ///< glide into the vowel: Italian "pia-" j
    Sound held;
    std::vector<Sound> after; ///< glide out of it
    bool optional = false;    ///< French final e muet
    bool stressed = false;
    bool secondary = false; ///< a weaker stress, as on the second part of a compound
    bool meets = false;     ///< follows the vowel before it without a consonant
    bool before_r = false;  ///< English: a written r belongs to it ("heart")

    /// Dictionary notation: held vowel and falling glide, "au̯".
    std::string ipa() const;
};

/// The vowel of a symbol that is surely on the chart.
Vowel vowel_of(std::string_view ipa);
Vowel glide_of(std::string_view ipa);

/// One phone of an IPA transcription.
struct Phone {
    std::string text;             ///< without length and stress
    std::optional<Vowel> vowel;   ///< nothing: a consonant
    int stress = 0;               ///< 2 primary, 1 secondary, carried by the vowel
    bool syllabic = false;        ///< a consonant with ◌̩
    bool boundary_before = false; ///< a dot, space or hyphen stood before it
    bool soft = false;            ///< a consonant with ʲ
    bool lengthened = false;      ///< a consonant with ː
};

struct Sounds {
    std::vector<Nucleus> nuclei;
    std::string doubt; ///< empty when the rules or the dictionary leave none
    std::vector<Phone> said =
        {}; ///< what the synthesiser said, with its consonants; empty where it was not asked
};

/// Takes a transcription apart; unknown characters are skipped, "(en)" language marks too.
std::vector<Phone> phones(std::string_view ipa);

} // namespace vowelway::diction
