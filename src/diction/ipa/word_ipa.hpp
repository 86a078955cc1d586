// SPDX-License-Identifier: MIT
// A whole word in IPA, as sung. Private to the layer.
#pragma once

#include "diction/syllables/singing.hpp"

#include <string>

namespace vowelway::diction {

struct WordIpa {
    std::string plain;  ///< "ˈliːbə", diphthongs without the sign of a glide
    std::string listed; ///< "liː.bə", as a word list takes it
};

/// `last_e`: whether a French e that is optional is sung. Without a vowel both are empty, but for
/// Slavic words of one consonant.
WordIpa word_ipa(Reading const& reading, Language language, DictionOptions const& options, bool last_e);

} // namespace vowelway::diction
