// SPDX-License-Identifier: MIT
// Written words as lower-case letters with their accents apart. Private to the layer.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::diction {

/// One letter: "È" is {e, U+0300}. `from` and `to` are its bytes in the text it was read from.
struct Letter {
    char32_t base = 0;
    char32_t mark = 0; ///< the last combining mark on it, or 0
    std::size_t from = 0, to = 0;
};

namespace mark {
inline constexpr char32_t grave = 0x300, acute = 0x301, circumflex = 0x302, tilde = 0x303, macron = 0x304,
                          breve = 0x306, diaeresis = 0x308, ring = 0x30A, caron = 0x30C, cedilla = 0x327;
}

/// Lower-case letters of a word; apostrophes of every shape become '\''; soft hyphens vanish; ligatures
/// æ œ ﬁ stay one letter (æ, œ) or are taken apart (ﬁ). Bytes that are not UTF-8 become U+FFFD.
std::vector<Letter> letters(std::string_view word);

/// The letters put together again in lower case: what a dictionary is searched for.
std::string lower(std::string_view word);
std::string lower(std::vector<Letter> const& letters);

/// A byte a letter: its base where that is ASCII, else a question mark. For rules that look for letters in a
/// row; their places are those of the letters.
std::string in_ascii(std::vector<Letter> const& letters);

bool is_letter(char32_t c);
/// Punctuation, blanks and music signs around a word.
std::string_view without_punctuation(std::string_view word);

} // namespace vowelway::diction
