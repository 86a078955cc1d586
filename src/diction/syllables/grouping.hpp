// SPDX-License-Identifier: MIT
// From a phone string to nuclei, and from nuclei to the letters that write them. Private to the layer.
#pragma once

#include "diction/words/rules.hpp"

#include <span>
#include <string_view>

namespace vowelway::diction {

/// Gathers phones into nuclei. `falling` lists the diphthongs of the language as pairs of base symbols
/// ("aɪ"): the second part becomes a glide; a vowel marked ◌̯ after a vowel is one always. Syllabic
/// consonants become ə. j, w, ɥ beside a vowel are glides: into it when a vowel follows, else out of it.
std::vector<Nucleus> gather(std::vector<Phone> const& phones, std::span<std::string_view const> falling);

/// Sets Sound::letter of every nucleus: the letters in order that best explain the vowels. Returns how badly
/// the worst of them fits, 0 well .. 1 not at all.
double place_on_letters(std::vector<Nucleus>& nuclei, Word const& word);

/// Drops the glides that no vowel letter writes: the w of "will", the j of "music" are consonants.
void drop_unwritten_glides(std::vector<Nucleus>& nuclei);

bool is_vowel_letter(char32_t base);
/// For each nucleus the first letter of its syllable; the consonants between two vowels go to the
/// following syllable as far as they can begin one; in Italian s goes with the consonant after it.
std::vector<std::size_t> divide(std::vector<Nucleus> const& nuclei, Word const& word, Language language);

} // namespace vowelway::diction
