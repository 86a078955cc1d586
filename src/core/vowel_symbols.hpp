// SPDX-License-Identifier: MIT
// The table of the chart: symbol, X-SAMPA, place. Private to the library.
#pragma once

#include "vowelway/core/vowel.hpp"

#include <string_view>

namespace vowelway {

struct VowelSymbol {
    char32_t ipa;
    std::string_view x_sampa;
    double height;   // 0 close .. 6 open
    double backness; // 0 front .. 2 back
    bool rounded;
};

// International Phonetic Association, chart of 2020, row by row; X-SAMPA after Wells (1995).
inline constexpr VowelSymbol vowel_table[] = {
    {U'i', "i", 0, 0, false},   {U'y', "y", 0, 0, true},    {U'ɨ', "1", 0, 1, false},
    {U'ʉ', "}", 0, 1, true},    {U'ɯ', "M", 0, 2, false},   {U'u', "u", 0, 2, true},
    {U'ɪ', "I", 1, 0.4, false}, {U'ʏ', "Y", 1, 0.4, true},  {U'ʊ', "U", 1, 1.6, true},
    {U'e', "e", 2, 0, false},   {U'ø', "2", 2, 0, true},    {U'ɘ', "@\\", 2, 1, false},
    {U'ɵ', "8", 2, 1, true},    {U'ɤ', "7", 2, 2, false},   {U'o', "o", 2, 2, true},
    {U'ə', "@", 3, 1, false},   {U'ɛ', "E", 4, 0.2, false}, {U'œ', "9", 4, 0.2, true},
    {U'ɜ', "3", 4, 1, false},   {U'ɞ', "3\\", 4, 1, true},  {U'ʌ', "V", 4, 2, false},
    {U'ɔ', "O", 4, 2, true},    {U'æ', "{", 5, 0.3, false}, {U'ɐ', "6", 5, 1.1, false},
    {U'a', "a", 6, 0.6, false}, {U'ɶ', "&", 6, 0.6, true},  {U'ɑ', "A", 6, 2, false},
    {U'ɒ', "Q", 6, 2, true},
};

/// Nothing where there is no such symbol.
VowelSymbol const* vowel_symbol(char32_t ipa);
/// Throws InputError.
VowelSymbol const& symbol_of(Vowel const& vowel);

} // namespace vowelway
