// SPDX-License-Identifier: MIT
#include "diction/italian/endings.hpp"
#include "diction/italian/italian.hpp"
#include "diction/italian/words.hpp"
#include "diction/syllables/grouping.hpp"
#include "diction/synthesis/synthesiser.hpp"

#include <limits>
#include <map>

namespace vowelway::diction {

namespace {

char32_t letter_of(char32_t symbol) {
    switch (symbol) {
    case U'ɛ':
        return U'e';
    case U'ɔ':
        return U'o';
    case U'ɪ':
    case U'j':
        return U'i';
    case U'ʊ':
    case U'w':
        return U'u';
    default:
        return symbol;
    }
}

// The synthesiser's vowels and glides, placed on the vowel letters in order at the least cost.
std::vector<std::optional<std::size_t>> place(std::vector<Phone> const& sounded, Word const& word) {
    std::vector<std::size_t> vowels;
    for (std::size_t i = 0; i < word.size(); ++i)
        if (is_vowel_letter(word[i].base)) vowels.push_back(i);
    std::size_t const n = sounded.size(), m = vowels.size();
    std::vector<std::vector<int>> cost(n + 1, std::vector<int>(m + 1, 0));
    auto const differ = [&](std::size_t i, std::size_t j) {
        auto const symbol = sounded[i].vowel ? sounded[i].vowel->base : sounded[i].text == "j" ? U'j' : U'w';
        return letter_of(symbol) == word[vowels[j]].base ? 0 : 6;
    };
    // An i that only spells (cia, gio, glia) is passed over for nothing; other i and u are dropped at times.
    auto const pass = [&](std::size_t j) {
        std::size_t const at = vowels[j];
        if (word[at].base != U'i') return word[at].base == U'u' ? 2 : 4;
        bool const before_vowel = at + 1 < word.size() && is_vowel_letter(word[at + 1].base);
        bool const spells = at > 0 && before_vowel &&
                            (word[at - 1].base == U'c' || word[at - 1].base == U'g' ||
                             (at > 1 && word[at - 1].base == U'l' && word[at - 2].base == U'g'));
        return spells ? 0 : 2;
    };
    for (std::size_t i = 0; i <= n; ++i)
        for (std::size_t j = 0; j <= m; ++j) {
            if (i == 0 && j == 0) continue;
            int best = std::numeric_limits<int>::max();
            if (i > 0) best = std::min(best, cost[i - 1][j] + 4);
            if (j > 0) best = std::min(best, cost[i][j - 1] + pass(j - 1));
            if (i > 0 && j > 0) best = std::min(best, cost[i - 1][j - 1] + differ(i - 1, j - 1));
            cost[i][j] = best;
        }
    std::vector<std::optional<std::size_t>> out(n);
    std::size_t i = n, j = m;
    while (i > 0 && j > 0) {
        if (cost[i][j] == cost[i][j - 1] + pass(j - 1)) {
            --j;
        } else if (cost[i][j] == cost[i - 1][j - 1] + differ(i - 1, j - 1)) {
            out[i - 1] = vowels[j - 1];
            --i;
            --j;
        } else {
            --i;
        }
    }
    return out;
}

// The letter an ending accents: its index in the word, and whether it is open. Nothing if the word does not
// end so.
std::optional<ItalianStress> ends_in(Word const& word, std::string_view ending) {
    auto const wanted = letters(ending);
    if (wanted.size() >= word.size()) return std::nullopt;
    std::size_t const from = word.size() - wanted.size();
    ItalianStress out;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        if (word[from + i].base != wanted[i].base) return std::nullopt;
        if (!wanted[i].mark) continue;
        out.letter = from + i;
        if (wanted[i].base == U'e' || wanted[i].base == U'o') out.open = wanted[i].mark == mark::grave;
    }
    return out;
}

// Older prints write è for every stressed last e: perchè, nè, sè, mercè are closed all the same.
bool closed_in_old_spelling(std::string_view word) {
    return word.ends_with("chè") || word == "nè" || word == "sè" || word == "mercè" || word.ends_with("trè");
}

// A listed word; the part after an apostrophe is the word ("l'amore").
std::optional<ItalianStress> listed(Word const& word) {
    static std::map<std::string, ItalianStress> const all = [] {
        std::map<std::string, ItalianStress> out;
        for (auto const entry : italian_words) {
            auto wanted = letters(entry);
            ItalianStress stress;
            for (std::size_t i = 0; i < wanted.size(); ++i) {
                if (!wanted[i].mark) continue;
                stress.letter = i;
                stress.open = wanted[i].mark == mark::grave;
                wanted[i].mark = 0;
            }
            out.emplace(lower(wanted), stress);
        }
        return out;
    }();
    std::size_t from = 0;
    for (std::size_t i = 0; i + 1 < word.size(); ++i)
        if (word[i].base == U'\'') from = i + 1;
    std::string key;
    for (std::size_t i = from; i < word.size(); ++i)
        if (is_letter(word[i].base)) key += word[i].base < 0x80 ? static_cast<char>(word[i].base) : '?';
    auto const found = all.find(key);
    if (found == all.end()) return std::nullopt;
    auto out = found->second;
    *out.letter += from;
    return out;
}

template <std::size_t N>
std::optional<ItalianStress> longest(Word const& word, std::string_view const (&endings)[N]) {
    std::optional<ItalianStress> best;
    std::size_t length = 0;
    for (auto const ending : endings)
        if (ending.size() > length)
            if (auto const found = ends_in(word, ending)) {
                best = found;
                length = ending.size();
            }
    return best;
}

// A consonant, i and a last vowel: "glòria", "prèmio", "Grècia"; not -eggio, -oglia, -oio.
bool before_i_and_vowel(Word const& word, std::size_t letter) {
    std::size_t const n = word.size();
    if (n < letter + 4 || word[n - 2].base != U'i' || !is_vowel_letter(word[n - 1].base) ||
        word[n - 1].base == U'i')
        return false;
    for (std::size_t i = letter + 1; i + 2 < n; ++i)
        if (is_vowel_letter(word[i].base)) return false;
    char32_t const last = word[n - 3].base, first = word[letter + 1].base;
    bool const doubled_g = last == U'g' && first == U'g' && letter + 1 != n - 3;
    bool const palatal = (last == U'l' && first == U'g') || (last == U'n' && first == U'g') || last == U'h';
    bool const doubled_c = last == U'c' && first == U'c' && letter + 1 != n - 3;
    return !palatal && !doubled_g && !doubled_c;
}

bool before_opening_suffix(Word const& word, std::size_t letter) {
    std::size_t i = letter + 1;
    while (i < word.size() && !is_vowel_letter(word[i].base)) ++i;
    if (i == letter + 1) return false;
    for (auto const suffix : opening_suffixes) {
        if (word.size() - i != suffix.size()) continue;
        bool same = true;
        for (std::size_t k = 0; k < suffix.size(); ++k)
            same = same && word[i + k].base == static_cast<unsigned char>(suffix[k]);
        if (same) return true;
    }
    return false;
}

} // namespace

ItalianStress italian_stress(Word const& word) {
    ItalianStress out;
    for (std::size_t i = 0; i < word.size(); ++i) {
        if (!is_vowel_letter(word[i].base) || (word[i].mark != mark::grave && word[i].mark != mark::acute))
            continue;
        out.letter = i;
        if (word[i].base == U'e') out.open = word[i].mark == mark::grave;
        if (word[i].base == U'o') out.open = word[i].mark == mark::grave;
    }
    if (out.letter && out.open == true && closed_in_old_spelling(lower(word))) out.open = false;
    if (out.letter) return out;
    if (auto const found = listed(word)) return *found;
    std::vector<Phone> sounded;
    for (auto const& phone : phones(Synthesiser::instance().ipa(lower(word), Language::italian)))
        if (phone.vowel || phone.text == "j" || phone.text == "w") sounded.push_back(phone);
    auto const places = place(sounded, word);
    for (std::size_t i = 0; i < sounded.size(); ++i) {
        if (sounded[i].stress != 2 || !places[i]) continue;
        out.letter = places[i];
        char32_t const symbol = sounded[i].vowel->base;
        if (symbol == U'ɛ' || symbol == U'ɔ') out.open = true;
        if (symbol == U'e' || symbol == U'o') out.open = false;
    }
    // uo and ie before a consonant are stressed on their second part: "stuol", "vien".
    if (out.letter && *out.letter + 2 < word.size()) {
        char32_t const here = word[*out.letter].base, next = word[*out.letter + 1].base;
        bool const rising = (here == U'u' && next == U'o') || (here == U'i' && next == U'e');
        if (rising && !is_vowel_letter(word[*out.letter + 2].base)) {
            ++*out.letter;
            out.open = true;
        }
    }
    if (auto const found = longest(word, stress_endings)) {
        if (found->letter != out.letter || found->open) out = *found;
    } else if (auto const quality = longest(word, quality_endings);
               quality && quality->letter == out.letter) {
        out.open = quality->open;
    } else if (out.letter &&
               (before_opening_suffix(word, *out.letter) || before_i_and_vowel(word, *out.letter))) {
        out.open = true;
    }
    return out;
}

} // namespace vowelway::diction
