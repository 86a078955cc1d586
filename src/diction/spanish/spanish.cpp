// SPDX-License-Identifier: MIT
// Spanish. Source: Real Academia Espanola, Ortografia de la lengua espanola (2010), chapter I 3.3 on
// diphthongs, triphthongs and hiatus and chapter II on the accent, from memory: i and u without an accent
// beside another vowel are glides; with one, or between two of a, e, o, vowels stay apart; u is silent in
// que, qui, gue, gui and a glide in gua, guo, cua; h does not part vowels; y is a vowel at the end of a word
// and alone.
#include "diction/syllables/grouping.hpp"
#include "vowelway/core/wording.hpp"

namespace vowelway::diction {

namespace {

bool is_vowel(char32_t c) { return c == U'a' || c == U'e' || c == U'i' || c == U'o' || c == U'u'; }
bool weak(Letter const& l) {
    return (l.base == U'i' || l.base == U'u' || l.base == U'y') && l.mark != mark::acute;
}

Vowel plain_in_spanish(char32_t c) {
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

Vowel glide(char32_t c) { return glide_of(c == U'u' ? "u" : "i"); }

// The letters of a word, and nothing beyond its end.
struct SpanishSpelling {
    Word const& word;
    Letter at(std::size_t i) const { return i < word.size() ? word[i] : Letter{}; }
    bool ends(std::size_t i) const { return i >= word.size() || !is_letter(word[i].base); }

    // y where it is no consonant: at the end, or before a consonant.
    bool y_vowel(std::size_t i) const {
        return ends(i + 1) || (i > 0 && !is_vowel(at(i + 1).base) && is_letter(at(i + 1).base));
    }
    // The u of que, qui, gue, gui, and of qu before any vowel.
    bool silent_u(std::size_t i) const {
        if (word[i].base != U'u' || i == 0) return false;
        char32_t const before = word[i - 1].base, next = at(i + 1).base;
        if (before == U'q' && is_vowel(next)) return true;
        return word[i].mark == 0 && (next == U'e' || next == U'i') && (before == U'q' || before == U'g');
    }
};

using Group = std::vector<std::size_t>; // letters of vowels that stand together, with h or without

std::vector<Group> groups_of(Word const& word, std::string& doubt) {
    SpanishSpelling const spelling{word};
    bool together = false;
    std::vector<Group> groups;
    for (std::size_t i = 0; i < word.size(); ++i) {
        char32_t const c = word[i].base;
        if (spelling.silent_u(i)) continue;
        if (!is_vowel(c) && !(c == U'y' && spelling.y_vowel(i))) {
            if (c != U'h') together = false;
            if (is_letter(c) && c > U'z' && c != U'ñ') doubt = worded("a letter that is not Spanish");
            continue;
        }
        if (!together) groups.emplace_back();
        groups.back().push_back(i);
        together = true;
    }
    return groups;
}

// Whether the weak vowel at place k of a group leads into the one after it: not one like it (ii, uu stay
// apart), not over an h ("prohi-", "marihuana").
bool leads_on(Word const& word, Group const& g, std::size_t k) {
    return k + 1 < g.size() && weak(word[g[k]]) && word[g[k]].base != word[g[k + 1]].base &&
           g[k + 1] == g[k] + 1;
}

// Whether the weak vowel at place k leans back on the strong one before it, having none to lead into ("aia").
bool leans_back(Word const& word, Group const& g, std::size_t k) {
    if (k >= g.size() || weak(word[g[k - 1]]) || !weak(word[g[k]])) return false;
    bool const leads = k + 1 < g.size() && word[g[k]].base != word[g[k + 1]].base;
    return word[g[k]].base != word[g[k - 1]].base && !leads;
}

// The nucleus that begins at place k, which moves past it: strong vowels and accented or lone weak ones are
// held; a weak one leans on a neighbour, forward first.
Nucleus nucleus_at(Word const& word, Group const& g, std::size_t& k) {
    Nucleus nucleus;
    for (; leads_on(word, g, k); ++k) nucleus.before.push_back({glide(word[g[k]].base), g[k]});
    auto const& held = word[g[k]];
    nucleus.held = {plain_in_spanish(held.base), g[k]};
    nucleus.stressed = held.mark == mark::acute;
    ++k;
    if (leans_back(word, g, k)) {
        nucleus.after.push_back({glide(word[g[k]].base), g[k]});
        ++k;
    }
    return nucleus;
}

// The accent falls where it is written; else on the last syllable but one after a vowel, n or s.
void set_accent(std::vector<Nucleus>& nuclei, Word const& word) {
    for (auto const& nucleus : nuclei)
        if (nucleus.stressed) return;
    if (nuclei.empty()) return;
    char32_t last = 0;
    for (auto const& l : word)
        if (is_letter(l.base)) last = l.base;
    bool const before_last = nuclei.size() > 1 && (is_vowel(last) || last == U'n' || last == U's');
    nuclei[nuclei.size() - (before_last ? 2 : 1)].stressed = true;
}

} // namespace

Sounds spanish(Word const& word) {
    Sounds out;
    for (auto const& group : groups_of(word, out.doubt))
        for (std::size_t k = 0; k < group.size();) out.nuclei.push_back(nucleus_at(word, group, k));
    set_accent(out.nuclei, word);
    return out;
}

} // namespace vowelway::diction
