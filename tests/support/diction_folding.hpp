// SPDX-License-Identifier: MIT
// Notation differences between lexica and our nuclei, folded on both sides alike (docs/diction.md).
#pragma once

#include "diction/words/sounds.hpp"
#include "vowelway/diction/sing_words.hpp"

#include <algorithm>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace vowelway::folding {

using Nuclei = std::vector<std::string>;

/// FNV-1a over the bytes, even: test half.
inline bool in_test_half(std::string_view word) {
    std::uint32_t hash = 2166136261u;
    for (unsigned char c : word) hash = (hash ^ c) * 16777619u;
    return (hash >> 7) % 2 == 0;
}

/// A vowel symbol as compared: length and small shades away, then the folds of the language.
inline char32_t folded(char32_t c, diction::Language language) {
    using enum diction::Language;
    bool const romance = language == italian || language == latin || language == spanish;
    switch (c) {
    case U'ɛ':
        return romance || language == english ? U'e' : c;
    case U'ɔ':
        return romance || language == french ? U'o' : c;
    case U'ɑ':
        return language == english ? c : U'a';
    case U'ɪ':
        return romance ? U'i' : c;
    case U'ʊ':
        return romance ? U'u' : c;
    case U'y':
        return language == latin ? U'i' : c; // Italianate: y as i
    case U'æ':
        return language == english ? U'a' : c;
    case U'ɝ':
        return U'ɜ';
    default:
        return c;
    }
}

/// The same for the languages whose lists write weak and short vowels in several ways (docs/diction.md).
inline char32_t folded(Vowel const& vowel, diction::Language language) {
    using enum diction::Language;
    char32_t const c = vowel.base;
    bool const is_short = vowel.length == VowelLength::normal;
    switch (language) {
    case swedish:
    case norwegian:
        if (c == U'ə' || (c == U'e' && is_short) || (c == U'æ' && language == swedish)) return U'ɛ';
        if (c == U'œ') return U'ø';
        if (c == U'ɪ') return U'i';
        if (c == U'ʏ') return U'y';
        if (c == U'ʊ') return U'u';
        if (c == U'ɵ') return U'ʉ';
        if (c == U'o' && is_short) return U'ɔ';
        break;
    case danish:
        if (c == U'ɐ' || c == U'ɘ') return U'ə';
        if (c == U'œ') return U'ø';
        if (c == U'ɒ' || c == U'ʌ') return U'ɔ';
        if (c == U'æ') return U'a';
        break;
    case portuguese:
        if (c == U'ɐ') return U'a';
        break;
    case welsh:
    case finnish:
        if (c == U'ɪ') return U'i';
        if (c == U'ʊ') return U'u';
        break;
    default:
        break;
    }
    return folded(c, language);
}

/// The class of a falling glide: i, u, or nothing for the vocalised r.
inline std::string glide(char32_t c) {
    switch (c) {
    case U'i':
    case U'ɪ':
    case U'j':
    case U'y':
    case U'ʏ':
    case U'e':
    case U'ø':
    case U'ɨ':
        return "i";
    case U'u':
    case U'ʊ':
    case U'w':
    case U'o':
        return "u";
    default:
        return "";
    }
}

inline bool falls(char32_t a, char32_t b, diction::Language language) {
    using enum diction::Language;
    if (glide(b).empty() && b != U'ə') return false;
    auto const any = [](char32_t c, std::u32string_view set) {
        return set.find(c) != std::u32string_view::npos;
    };
    switch (language) {
    case english:
        return (any(b, U"ɪ") && any(a, U"aeɔʌɑəɛo")) || (any(b, U"ʊ") && any(a, U"aəoɑæ")) ||
               (b == U'ə' && any(a, U"ɪʊeɛ"));
    case german:
        return (any(b, U"ɪi") && any(a, U"aɔ")) || (any(b, U"ʊu") && a == U'a') ||
               (any(b, U"ʏøɪ") && a == U'ɔ');
    case spanish:
        return any(a, U"aeo") && any(b, U"iu");
    default:
        return false;
    }
}

inline Nuclei nuclei(std::string_view phones_text, diction::Language language) {
    language = diction::main_language(language);
    Nuclei out;
    std::string text; // blanks only separate phones; a dot is a syllable border
    for (char c : phones_text)
        if (c != ' ') text += c;
    auto const phones = diction::phones(text);
    auto const is_vowel = [&](std::size_t i) {
        return i < phones.size() && phones[i].vowel && !phones[i].vowel->glide;
    };
    bool open = false; // a nucleus that may still take a glide
    char32_t last = 0;
    for (std::size_t i = 0; i < phones.size(); ++i) {
        auto const& p = phones[i];
        if (p.syllabic && !p.vowel) {
            bool const north =
                language == diction::Language::norwegian || language == diction::Language::swedish;
            if (language != diction::Language::french) out.push_back(north ? "ɛ" : "ə");
            open = false;
        } else if (!p.vowel || p.vowel->glide) {
            char32_t const c = p.vowel ? p.vowel->base : p.text == "j" ? U'j' : p.text == "w" ? U'w' : 0;
            if (open && c && (p.vowel || !is_vowel(i + 1))) out.back() += glide(c);
            open = false;
        } else if (open && falls(last, p.vowel->base, language)) {
            out.back() += glide(p.vowel->base);
            open = false;
        } else if (language == diction::Language::french && p.vowel->base == U'ə') {
            open = false;
        } else {
            char32_t const c = folded(*p.vowel, language);
            std::string symbol = Vowel{.base = c, .nasal = p.vowel->nasal}.ipa();
            out.push_back(symbol);
            last = p.vowel->base;
            open = true;
        }
    }
    if (language == diction::Language::danish) // "løg": the lists write the letter
        std::replace(out.begin(), out.end(), std::string("øi"), std::string("ɔi"));
    // əʊ and oʊ, ʌɪ and aɪ, eə and ɛː: one vowel in several notations of English.
    if (language == diction::Language::english) {
        for (auto& n : out) {
            if (n == "əu")
                n = "ou";
            else if (n == "ʌi")
                n = "ai";
            else if (n == "ɑu")
                n = "au";
        }
    }
    return out;
}

inline Nuclei nuclei(SungWord const& word, diction::Language language) {
    Nuclei out;
    for (auto const& syllable : word.syllables) {
        if (syllable.optional) continue;
        auto const one = nuclei(syllable.ipa, language);
        out.insert(out.end(), one.begin(), one.end());
    }
    return out;
}

/// What counts as right. English "ɪ ə" is one vowel in "near" and two in "Acadian", "ʊ ə" one in "pure" and
/// two in "actual", and the lexicon does not say which: both are allowed.
inline std::vector<std::string> alternatives(std::vector<std::string> const& listed,
                                             diction::Language language) {
    auto out = listed;
    if (language != diction::Language::english) return out;
    for (auto const& [pair, apart] : {std::pair{"ɪ ə", "i.ə"}, std::pair{"ʊ ə", "ʊ.ə"}})
        for (auto const& phones : listed)
            if (auto const joint = phones.rfind(pair); joint != std::string::npos) {
                auto other = phones;
                out.push_back(other.replace(joint, std::string_view(pair).size(), apart));
            }
    return out;
}

inline std::size_t edit_distance(Nuclei const& a, Nuclei const& b) {
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            auto const above = row[j];
            row[j] = std::min({row[j] + 1, row[j - 1] + 1, diagonal + (a[i - 1] != b[j - 1])});
            diagonal = above;
        }
    }
    return row[b.size()];
}

/// Open or closed e and o in stressed Italian syllables. The lexicon marks no stress, but an open ɛ or ɔ is
/// always stressed; closed ones count where ours is stressed, so words whose stress we miss count as wrong.
struct Quality {
    std::size_t syllables = 0, right = 0, open = 0, open_right = 0;
};

inline std::vector<char32_t> bases(std::string_view phones_text) {
    std::vector<char32_t> out;
    for (auto const& p : diction::phones(phones_text))
        if (p.vowel && !p.vowel->glide) out.push_back(p.vowel->base);
    return out;
}

inline void count_quality(SungWord const& word, std::vector<std::string> const& alternatives,
                          Quality& quality) {
    std::vector<char32_t> ours;
    for (auto const& s : word.syllables)
        for (auto const c : bases(s.ipa)) {
            ours.push_back(c);
            break;
        }
    std::size_t stressed = ours.size();
    for (std::size_t i = 0; i < word.syllables.size() && i < ours.size(); ++i)
        if (word.syllables[i].stressed) stressed = i;
    bool is_open = false, counts = false, right = false;
    for (auto const& alternative : alternatives) {
        auto const wanted = bases(alternative);
        if (wanted.size() != ours.size()) continue;
        std::size_t at = stressed;
        bool open = false;
        for (std::size_t i = 0; i < wanted.size(); ++i)
            if (wanted[i] == U'ɛ' || wanted[i] == U'ɔ') {
                at = i;
                open = true;
            }
        if (at >= wanted.size() || std::u32string_view(U"eɛoɔ").find(wanted[at]) == std::u32string_view::npos)
            continue;
        if (!counts) is_open = open;
        counts = true;
        right = right || wanted[at] == ours[at];
    }
    quality.syllables += counts;
    quality.right += counts && right;
    quality.open += counts && is_open;
    quality.open_right += counts && is_open && right;
}

} // namespace vowelway::folding
