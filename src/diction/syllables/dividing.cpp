// SPDX-License-Identifier: MIT
// Where the syllables of a word begin.
#include "diction/syllables/grouping.hpp"

#include <algorithm>
#include <string_view>

namespace vowelway::diction {

namespace {

bool one_of(char32_t c, std::u32string_view letters) {
    return c && letters.find(c) != std::u32string_view::npos;
}

/// Of the consonants between `from` and `to`, the first that begins the syllable of the vowel at `to`.
std::size_t first_of_syllable(Word const& word, std::size_t from, std::size_t to, Language language) {
    auto const base = [&](std::size_t i) { return word[i].base; };
    std::size_t cut = to;
    while (cut > from && is_vowel_letter(base(cut - 1))) --cut;
    if (cut <= from) return cut; // they lie in no order where there are fewer letters than vowels
    --cut;
    char32_t const last = base(cut), before = cut > from ? base(cut - 1) : 0;
    bool const liquid = (last == U'l' || last == U'r') && one_of(before, U"bcdfgptv");
    bool const digraph = (last == U'h' && one_of(before, U"cpstgr")) || (last == U'n' && before == U'g') ||
                         (last == U'c' && before == U's' && (base(to) == U'e' || base(to) == U'i'));
    if (liquid || digraph) --cut;
    if (digraph && last == U'h' && before == U'c' && cut > from && base(cut - 1) == U's') --cut;
    if (language == Language::italian && cut > from && base(cut - 1) == U's' && base(cut) != U's') --cut;
    return cut;
}

} // namespace

std::vector<std::size_t> divide(std::vector<Nucleus> const& nuclei, Word const& word, Language language) {
    std::vector<std::size_t> starts;
    for (std::size_t k = 0; k < nuclei.size(); ++k) {
        if (k == 0) {
            starts.push_back(0);
            continue;
        }
        auto const& left = nuclei[k - 1];
        std::size_t from = (left.after.empty() ? left.held.letter : left.after.back().letter) + 1;
        std::size_t const to =
            nuclei[k].before.empty() ? nuclei[k].held.letter : nuclei[k].before.front().letter;
        // Vowel letters that write no vowel of their own stay with the vowel before them, a silent i or u
        // after c, g, q with the one after.
        while (from < to && is_vowel_letter(word[from].base)) ++from;
        starts.push_back(std::max(first_of_syllable(word, from, to, language), starts.back()));
    }
    return starts;
}

} // namespace vowelway::diction
