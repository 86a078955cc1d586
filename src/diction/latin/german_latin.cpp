// SPDX-License-Identifier: MIT
// Latin as it is sung in German-speaking countries. Syllables and diphthongs are those of latin.cpp; the
// vowels are those of German: closed in an open syllable, open in a closed one; ae is ɛ, oe ø, y y; u after q
// is the consonant v. Sources: T. Siebs, Deutsche Aussprache (1969), on Latin words; H. Copeman, Singing in
// Latin (1990), on the German tradition; from memory.
#include "diction/syllables/grouping.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

struct GermanLatin {
    Word const& word;
    std::vector<Nucleus>& nuclei;

    char32_t at(std::size_t i) const { return i < word.size() ? word[i].base : U'\0'; }
    bool consonant(std::size_t i) const {
        return i < word.size() && is_letter(word[i].base) && !is_vowel_letter(word[i].base);
    }

    // Two consonants after the vowel, or one at the end of the word; a stop with l or r, and ch, ph, th, qu
    // count as one, x as two.
    bool closed(std::size_t vowel) const {
        std::size_t i = vowel + 1;
        std::size_t count = 0;
        while (consonant(i)) {
            char32_t const c = at(i), next = at(i + 1);
            bool const aspirate = next == U'h' && (c == U'c' || c == U'p' || c == U't' || c == U'r');
            bool const liquid = (next == U'l' || next == U'r') &&
                                std::u32string_view(U"bcdfgpt").find(c) != std::u32string_view::npos;
            count += c == U'x' ? 2 : 1;
            i += aspirate || liquid ? 2 : 1;
        }
        bool const last = i >= word.size() || !is_letter(at(i));
        return count > 1 || (count == 1 && last);
    }

    std::string_view value(std::size_t i, bool is_closed) const {
        switch (at(i)) {
        case U'a':
            return at(i + 1) == U'e' ? "ɛː" : is_closed ? "a" : "aː";
        case U'o':
            return is_closed ? "ɔ" : "o";
        case U'u':
            return is_closed ? "ʊ" : "u";
        case U'i':
            return is_closed ? "ɪ" : "i";
        case U'y':
            return is_closed ? "ʏ" : "y";
        case U'æ':
            return "ɛː";
        case U'œ':
            return "ø";
        default:
            return is_closed ? "ɛ" : "e";
        }
    }

    void mend(Nucleus& nucleus) const {
        std::size_t const i = nucleus.held.letter;
        bool const digraph = nucleus.held.vowel.base == U'e' && at(i + 1) == U'e' && nucleus.after.empty() &&
                             (at(i) == U'a' || at(i) == U'o');
        if (digraph) {
            nucleus.held.vowel = vowel_of(at(i) == U'a' ? "ɛː" : "ø");
        } else if (nucleus.after.empty()) {
            nucleus.held.vowel = at(i) == U'a' ? vowel_of("a") : vowel_of(value(i, closed(i)));
        } else if (at(i) == U'e') { // "eu-ge" as in German
            nucleus.held.vowel = vowel_of("ɔ");
            nucleus.after.front().vowel = glide_of("ʏ");
        } else {
            nucleus.held.vowel = vowel_of(at(i) == U'u' ? "u" : "a");
            if (at(i) == U'a') nucleus.after.front().vowel = glide_of("ʊ");
        }
        auto& before = nucleus.before; // qu, gu, su: the u is v there, a consonant
        before.erase(std::remove_if(before.begin(), before.end(),
                                    [](Sound const& sound) { return sound.vowel.base == U'u'; }),
                     before.end());
    }
};

} // namespace

Sounds german_latin(Word const& word) {
    auto out = latin(word);
    GermanLatin const mender{word, out.nuclei};
    for (auto& nucleus : out.nuclei) mender.mend(nucleus);
    return out;
}

} // namespace vowelway::diction
