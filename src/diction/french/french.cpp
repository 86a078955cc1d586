// SPDX-License-Identifier: MIT
// French. The synthesiser's dictionary gives the vowels, the spelling rules of french_spelling.cpp step in
// where it takes a word for foreign. Then what song changes: u and i before a vowel are glides, except after
// a consonant and l or r; every e between consonants is a syllable; a last e is one where the score sets it.
// Sources: T. Grubb, Singing in French (1979); P. Fouche, Traite de prononciation francaise (1956); from
// memory.
#include "diction/french/french.hpp"

#include "diction/syllables/grouping.hpp"
#include "diction/synthesis/synthesiser.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

struct French {
    Word const& word;
    std::vector<Nucleus>& nuclei;

    char32_t at(std::size_t i) const { return i < word.size() ? word[i].base : U'\0'; }
    bool vowel(std::size_t i) const { return is_vowel_letter(at(i)); }
    bool consonant(std::size_t i) const { return i < word.size() && is_letter(at(i)) && !vowel(i); }
    bool plain_e(std::size_t i) const { return at(i) == U'e' && !word[i].mark; }
    bool spelled(std::size_t i, std::u32string_view letters) const {
        for (std::size_t k = 0; k < letters.size(); ++k)
            if (at(i + k) != letters[k]) return false;
        return true;
    }

    // Two consonants of which the second is l or r keep i and u apart: pri-er, cru-el.
    bool cluster_before(std::size_t i) const {
        return i >= 2 && (at(i - 1) == U'l' || at(i - 1) == U'r') && consonant(i - 2) && at(i - 2) != U'l' &&
               at(i - 2) != U'r';
    }

    void make_glides() {
        for (std::size_t k = 0; k + 1 < nuclei.size();) {
            auto& left = nuclei[k];
            std::size_t const i = left.held.letter;
            bool const u = left.held.vowel.base == U'y' && at(i) == U'u' && word[i].mark != mark::diaeresis;
            bool const close = u && nuclei[k + 1].held.letter == i + 1 && left.before.empty() &&
                               left.after.empty() && word[i + 1].mark != mark::diaeresis;
            bool const before_i = at(i + 1) == U'i';
            if (close && (before_i || !cluster_before(i))) {
                auto glide = left.held;
                glide.vowel = glide_of("y");
                nuclei[k + 1].before.insert(nuclei[k + 1].before.begin(), glide);
                nuclei.erase(nuclei.begin() + static_cast<std::ptrdiff_t>(k));
            } else {
                ++k;
            }
        }
    }

    // Vowel harmony and derived words: what the dictionary writes for the stem is not kept before an ending.
    void mend(std::size_t k) {
        auto& v = nuclei[k].held.vowel;
        std::size_t const i = nuclei[k].held.letter;
        bool const last = k + 1 == nuclei.size();
        if (v.base == U'a' && !v.nasal && at(i) == U'a' && word[i].mark == mark::circumflex)
            v = vowel_of("ɑ"); // âme
        if (v.base == U'ɛ' && !v.nasal && !last && plain_e(i) && spelled(i + 1, U"ss")) v = vowel_of("e");
        if (v.base == U'ɛ' && !v.nasal && last && spelled(i, U"ai") && i + 2 == word.size())
            v = vowel_of("e");
        if ((at(i) == U'œ' || at(i) == U'æ') && at(i + 1) != U'u' && v.base != U'ɛ') v = vowel_of("e");
        if (v.base == U'ɛ' && !v.nasal && k + 2 == nuclei.size() && at(i) == U'e' &&
            word[i].mark == mark::circumflex)
            v = vowel_of("e");
        if (v.base == U'ø' && i > 0 && at(i - 1) != U'n' && at(i) == U'e' && at(i + 1) == U'u' &&
            word[i + 1].mark == 0 && (at(i + 2) == U'r' || spelled(i + 2, U"v") || spelled(i + 2, U"pl")) &&
            !(at(i + 3) == U'e' && at(i + 4) == U'u'))
            v = vowel_of("œ");
        if (v.base == U'ø' && i > 0 && spelled(i - 1, U"jeun")) v = vowel_of("œ");
        if (v.nasal && v.base == U'ɑ' &&
            (spelled(i > 0 ? i - 1 : 0, U"pent") || spelled(i > 0 ? i - 1 : 0, U"benz"))) {
            bool const learned = at(i + 2) == U'z' || at(i + 3) == U'a' || at(i + 3) == U'o';
            if (learned) v = vowel_of("ɛ̃");
        }
    }

    /// The letters from `i` on are written only: "mot", "repos", "trop".
    bool silent_from(std::size_t i) const {
        std::u32string rest;
        for (; i < word.size() && is_letter(at(i)); ++i) rest += at(i);
        for (auto const* end : {U"", U"t", U"ts", U"s", U"p", U"ps", U"d", U"ds", U"x", U"h"})
            if (rest == end) return true;
        return false;
    }

    // Lyric diction: o is closed where it ends the word in sound, before the sound z, in -otion, au and ô;
    // open elsewhere, au before r too. Grubb (1979).
    void mend_o(std::size_t k) {
        auto& v = nuclei[k].held.vowel;
        std::size_t i = nuclei[k].held.letter;
        if ((v.base != U'o' && v.base != U'ɔ') || v.nasal) return;
        if (at(i) == U'u' && i > 0 && at(i - 1) == U'a') --i;
        if (at(i) == U'a' && at(i + 1) == U'u') {
            bool const open = at(i + 2) == U'r' && !(i > 0 && at(i - 1) == U'e');
            v = vowel_of(open ? "ɔ" : "o");
        } else if (at(i) == U'o') {
            bool const z = (at(i + 1) == U's' && vowel(i + 2)) || at(i + 1) == U'z';
            bool const stem = i > 0 && spelled(i + 1, U"ss") &&
                              (spelled(i - 1, U"foss") || (i > 1 && spelled(i - 2, U"gross")));
            bool const closed = word[i].mark == mark::circumflex || z || stem || spelled(i + 1, U"tion") ||
                                (k + 1 == nuclei.size() && silent_from(i + 1));
            v = vowel_of(closed ? "o" : "ɔ");
        }
    }

    // eu and œu are closed where they end the word in sound: "vœu", "nœud", "deux"; and in monsieur.
    void mend_last_eu(std::size_t k) {
        auto& v = nuclei[k].held.vowel;
        if (v.base != U'œ' || v.nasal || k + 1 != nuclei.size()) return;
        std::size_t u = nuclei[k].held.letter;
        while (u < word.size() && at(u) != U'u') ++u;
        bool const monsieur = spelled(u + 1, U"r") && spelled(0, U"monsieu");
        if (silent_from(u + 1) || spelled(u + 1, U"fs") || monsieur) v = vowel_of("ø");
    }

    // "rien" is one syllable; behind r the synthesiser parts it.
    void join_rien() {
        if (nuclei.size() != 2 || !spelled(0, U"rien") || nuclei[0].held.vowel.base != U'i') return;
        nuclei[1].before.insert(nuclei[1].before.begin(), {glide_of("i"), nuclei[0].held.letter});
        nuclei.erase(nuclei.begin());
    }

    // e between consonants that speech drops is sung.
    void restore_inner_e() {
        for (std::size_t i = 1; i + 2 < word.size(); ++i) {
            if (!plain_e(i) || !consonant(i - 1) || !consonant(i + 1)) continue;
            std::size_t next = i + 1;
            while (next < word.size() && consonant(next)) ++next;
            if (next >= word.size() || !vowel(next)) continue;
            bool const held = std::any_of(nuclei.begin(), nuclei.end(),
                                          [&](Nucleus const& n) { return n.held.letter == i; });
            if (held) continue;
            bool const mute_ending = plain_e(next) && (next + 1 == word.size() ||
                                                       (next + 2 == word.size() && at(next + 1) == U's'));
            if (mute_ending) continue;
            auto const after = std::find_if(nuclei.begin(), nuclei.end(),
                                            [&](Nucleus const& n) { return n.held.letter > i; });
            nuclei.insert(after, Nucleus{{}, {vowel_of("ə"), i}, {}});
        }
    }

    // -e, -es, and -ent of verbs: a syllable where the score sets one.
    void add_last_e() {
        std::size_t n = word.size();
        while (n > 0 && !is_letter(at(n - 1))) --n;
        std::size_t e = n;
        if (n >= 2 && plain_e(n - 1))
            e = n - 1;
        else if (n >= 3 && plain_e(n - 2) && at(n - 1) == U's')
            e = n - 2;
        else if (n >= 4 && plain_e(n - 3) && spelled(n - 2, U"nt"))
            e = n - 3;
        if (e == n || e == 0 || nuclei.empty()) return;
        auto const& last = nuclei.back();
        std::size_t const reach = last.after.empty() ? last.held.letter : last.after.back().letter;
        bool const after_consonant = consonant(e - 1) || spelled(e - 2, U"qu") || spelled(e - 2, U"gu");
        if (after_consonant && reach < e) nuclei.push_back(Nucleus{{}, {vowel_of("ə"), e}, {}, true});
    }
};

/// Forms of "asseoir", which the synthesiser takes for English, with what is elided before them.
std::string said_in_french(Word const& word) {
    auto text = spoken(word);
    for (auto const* form : {"assieds", "assied"})
        if (auto const at = text.rfind(form); at != std::string::npos && text.ends_with(form)) {
            auto const before = text.substr(0, at);
            if (before.empty()) return "asjˈe";
            if (before == "m'" || before == "t'" || before == "s'") return before.substr(0, 1) + "asjˈe";
        }
    return Synthesiser::instance().ipa(text, Language::french);
}

} // namespace

Sounds french(Word const& word) {
    Sounds out;
    auto const ipa = said_in_french(word);
    if (ipa.find("(en)") != std::string::npos) {
        out = french_by_spelling(word);
        out.said = phones(ipa);
    } else {
        auto sounded = phones(ipa);
        for (std::size_t i = 0; i < sounded.size(); ++i) {
            if (!sounded[i].vowel) continue;
            auto& v = *sounded[i].vowel;
            if (v.base == U'ɑ' && !v.nasal) v.base = U'a';
            if (v.base == U'ɪ') v.base = U'i';
            if (v.base == U'ʊ') v.base = U'u';
            if (v.base == U'ɒ') v.base = U'ɔ';
            bool const u_before_i = v.base == U'y' && i + 1 < sounded.size() && sounded[i + 1].vowel &&
                                    sounded[i + 1].vowel->base == U'i';
            if (u_before_i) v.glide = true;
        }
        out.nuclei = gather(sounded, {});
        place_on_letters(out.nuclei, word);
        out.said = std::move(sounded);
    }
    French song{word, out.nuclei};
    song.make_glides();
    song.join_rien();
    for (std::size_t k = 0; k < out.nuclei.size(); ++k) song.mend(k);
    for (std::size_t k = 0; k < out.nuclei.size(); ++k) {
        song.mend_o(k);
        song.mend_last_eu(k);
    }
    song.restore_inner_e();
    song.add_last_e();
    return out;
}

} // namespace vowelway::diction
