// SPDX-License-Identifier: MIT
// Spanish. Source: Real Academia Espanola, Ortografia de la lengua espanola (2010), chapter I 3.3 on
// diphthongs, triphthongs and hiatus and chapter II on the accent, from memory: i and u without an accent
// beside another vowel are glides; with one, or between two of a, e, o, vowels stay apart; u is silent in
// que, qui, gue, gui and a glide in gua, guo, cua; h does not part vowels; y is a vowel at the end of a word
// and alone.
#include "diction/syllables/grouping.hpp"

namespace vowelway::diction {

namespace {

bool is_vowel(char32_t c) { return c == U'a' || c == U'e' || c == U'i' || c == U'o' || c == U'u'; }
bool weak(Letter const& l) {
    return (l.base == U'i' || l.base == U'u' || l.base == U'y') && l.mark != mark::acute;
}

Vowel plain(char32_t c) {
    switch (c) {
    case U'a':
        return vowel_of("a");
    case U'e':
        return vowel_of("e");
    case U'o':
        return vowel_of("o");
    case U'u':
        return vowel_of("u");
    default:
        return vowel_of("i");
    }
}

} // namespace

Sounds spanish(Word const& word) {
    Sounds out;
    std::size_t const n = word.size();
    auto const at = [&](std::size_t i) { return i < n ? word[i] : Letter{}; };
    auto const ends = [&](std::size_t i) { return i >= n || !is_letter(word[i].base); };
    // Vowels that stand together, with h or without.
    std::size_t last_place = 0;
    struct Group {
        std::vector<std::size_t> letters;
    };
    std::vector<Group> groups;
    for (std::size_t i = 0; i < n; ++i) {
        char32_t const c = word[i].base;
        bool vowel = is_vowel(c);
        if (c == U'y' && (ends(i + 1) || (i > 0 && !is_vowel(at(i + 1).base) && is_letter(at(i + 1).base))))
            vowel = true;
        if (c == U'u' && word[i].mark == 0 && (at(i + 1).base == U'e' || at(i + 1).base == U'i') && i > 0 &&
            (word[i - 1].base == U'q' || word[i - 1].base == U'g'))
            continue;
        if (c == U'u' && i > 0 && word[i - 1].base == U'q' && is_vowel(at(i + 1).base)) continue;
        if (!vowel) {
            if (c != U'h') last_place = 0;
            if (is_letter(c) && c > U'z' && c != U'ñ') out.doubt = "a letter that is not Spanish";
            continue;
        }
        if (last_place == 0) groups.emplace_back();
        groups.back().letters.push_back(i);
        last_place = i + 1;
    }
    for (auto const& group : groups) {
        auto const& g = group.letters;
        // Strong vowels and accented or lone weak ones are held; a weak one leans on a neighbour, forward
        // first.
        std::size_t k = 0;
        while (k < g.size()) {
            Nucleus nucleus;
            // Glides into it.
            while (k + 1 < g.size() && weak(word[g[k]])) {
                auto const& here = word[g[k]];
                auto const& next = word[g[k + 1]];
                bool const doubled = here.base == next.base; // ii, uu stay apart
                if (doubled) break;
                bool const h_between = g[k + 1] != g[k] + 1; // "prohi-", "marihuana": the u after h leads on
                if (h_between) break;
                nucleus.before.push_back({glide_of(here.base == U'u' ? "u" : "i"), g[k]});
                ++k;
            }
            nucleus.held = {plain(word[g[k]].base), g[k]};
            auto const held = word[g[k]];
            ++k;
            bool const strong = !weak(held);
            if (strong && k < g.size() && weak(word[g[k]]) && word[g[k]].base != held.base) {
                // A weak vowel after it leans back, unless a vowel follows that it can lead into ("aia").
                bool const leads = k + 1 < g.size() && word[g[k]].base != word[g[k + 1]].base;
                if (!leads) {
                    nucleus.after.push_back({glide_of(word[g[k]].base == U'u' ? "u" : "i"), g[k]});
                    ++k;
                }
            }
            nucleus.stressed = held.mark == mark::acute;
            out.nuclei.push_back(std::move(nucleus));
        }
    }
    // The accent falls where it is written; else on the last syllable but one after a vowel, n or s.
    bool written = false;
    for (auto const& nucleus : out.nuclei) written = written || nucleus.stressed;
    if (!written && !out.nuclei.empty()) {
        char32_t last = 0;
        for (auto const& l : word)
            if (is_letter(l.base)) last = l.base;
        bool const before_last = out.nuclei.size() > 1 && (is_vowel(last) || last == U'n' || last == U's');
        out.nuclei[out.nuclei.size() - (before_last ? 2 : 1)].stressed = true;
    }
    return out;
}

} // namespace vowelway::diction
