// SPDX-License-Identifier: MIT
#include "diction/regular/regular.hpp"
#include "diction/syllables/grouping.hpp"
#include "diction/synthesis/synthesiser.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {
// Falling diphthongs as the synthesiser writes them. Source: the languages' phoneme tables in the Handbook of
// the International Phonetic Association (1999), from memory.
constexpr std::string_view general[] = {"aɪ", "aʊ", "ai", "au", "eɪ", "ei", "eʊ", "eu", "ɔɪ", "ɔi",
                                        "oɪ", "oi", "oʊ", "ou", "ɛɪ", "ɛi", "ɛu", "ɛʊ", "œy", "œʏ",
                                        "ʌu", "ʌʊ", "iu", "iʊ", "uɪ", "ui", "ɑɪ", "ɑʊ", "ɑu", "ɑi"};
} // namespace

std::string spoken(std::vector<Letter> const& word) {
    if (word.size() != 1) return lower(word);
    auto bare = word;
    bare.front().mark = 0;
    return lower(bare);
}

Sounds synthesised(Word const& word, Language language) {
    Sounds out;
    out.said = phones(Synthesiser::instance().ipa(spoken(word), language));
    out.nuclei = gather(out.said, general);
    place_on_letters(out.nuclei, word);
    drop_unwritten_glides(out.nuclei);
    return out;
}

Sounds sounds(Word const& word, Language language) {
    if (std::any_of(word.begin(), word.end(),
                    [](Letter const& l) { return l.base >= U'0' && l.base <= U'9'; })) {
        auto out = synthesised(word, language);
        out.doubt = worded("a number, as the synthesiser reads it");
        return out;
    }
    switch (language) {
    case Language::italian:
        return italian(word);
    case Language::latin:
        return latin(word);
    case Language::spanish:
        return spanish(word);
    case Language::german:
        return german(word);
    case Language::french:
        return french(word);
    case Language::english:
    case Language::american_english:
        return english(word, language);
    case Language::german_latin:
        return german_latin(word);
    case Language::portuguese:
        return portuguese(word);
    case Language::welsh:
        return welsh(word);
    case Language::swedish:
    case Language::norwegian:
    case Language::danish:
        return scandinavian(word, language);
    case Language::hebrew:
    case Language::church_slavonic:
        return transliterated(word, language);
    case Language::finnish:
    case Language::hungarian:
    case Language::czech:
    case Language::polish:
        return regular(word, language);
    case Language::russian:
        return russian(word);
    default: {
        auto out = synthesised(word, language);
        out.doubt = worded("there are no diction rules for this language: vowels from the synthesiser");
        return out;
    }
    }
}

} // namespace vowelway::diction
