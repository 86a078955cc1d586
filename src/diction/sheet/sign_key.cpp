// SPDX-License-Identifier: MIT
// Source of the values: Handbook of the International Phonetic Association (1999), from memory.
#include "diction/sheet/sign_key.hpp"

#include "diction/words/letters.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <array>

namespace vowelway::diction {

namespace {

struct Sign {
    std::string_view sign, says;
    Language only = Language::hawaiian; ///< hawaiian: any; else what it says holds for this language alone
};

constexpr Language any = Language::hawaiian; // a place holder: no sign is Hawaiian alone

// The longer before the shorter where one begins the other; first what holds for one language.
constexpr std::array signs_known{
    Sign{"ɑ̃", to_word("dark a through the nose"), any},
    Sign{"ɛ̃", to_word("open e through the nose"), any},
    Sign{"ɔ̃", to_word("o through the nose"), any},
    Sign{"œ̃", to_word("œ through the nose"), any},
    Sign{"ã", to_word("a through the nose"), any},
    Sign{"ẽ", to_word("closed e through the nose"), any},
    Sign{"ĩ", to_word("i through the nose"), any},
    Sign{"õ", to_word("closed o through the nose"), any},
    Sign{"ũ", to_word("u through the nose"), any},
    Sign{"aɪ", to_word("the first vowel is held, the second brief"), any},
    Sign{"aʊ", to_word("the first vowel is held, the second brief"), any},
    Sign{"ɔʏ", to_word("the first vowel is held, the second brief"), any},
    Sign{"ɔɪ", to_word("the first vowel is held, the second brief"), any},
    Sign{"eɪ", to_word("the first vowel is held, the second brief"), any},
    Sign{"oʊ", to_word("the first vowel is held, the second brief"), any},
    Sign{"ɪə", to_word("the first vowel is held, the second brief"), Language::english},
    Sign{"ɛə", to_word("the first vowel is held, the second brief"), Language::english},
    Sign{"ʊə", to_word("the first vowel is held, the second brief"), Language::english},
    Sign{"i", to_word("as in English see, without a glide"), any},
    Sign{"ɪ", to_word("short, as in English sit"), any},
    Sign{"y", to_word("i with the lips of u"), any},
    Sign{"ʏ", to_word("ɪ with rounded lips"), any},
    Sign{"e", to_word("closed e, near i"), any},
    Sign{"ø", to_word("closed e with the lips of o"), any},
    Sign{"ɛ", to_word("open e, as in English bed"), any},
    Sign{"œ", to_word("open e with rounded lips"), any},
    Sign{"æ", to_word("as in English cat"), any},
    Sign{"a", to_word("bright a"), any},
    Sign{"ɑ", to_word("dark a, as in English father"), any},
    Sign{"ɒ", to_word("as in British hot"), any},
    Sign{"ɔ", to_word("open o, as in English law"), any},
    Sign{"o", to_word("closed o, near u"), any},
    Sign{"ʊ", to_word("short, as in English book"), any},
    Sign{"u", to_word("as in English moon"), any},
    Sign{"ʌ", to_word("as in English cup"), any},
    Sign{"ɜ", to_word("as in British bird"), any},
    Sign{"ɐ", to_word("weak a, as in the ending -er"), any},
    Sign{"ə", to_word("e muet, with the lips of œ"), Language::french},
    Sign{"ə", to_word("weak e, never stressed"), any},
    Sign{"ɨ", to_word("between i and u, the lips spread"), any},
    Sign{"ʉ", to_word("between y and u, the lips rounded"), any},
    Sign{"ɵ", to_word("short, between ø and o"), any},
    Sign{"tʃ", to_word("as in English church"), any},
    Sign{"dʒ", to_word("as in English judge"), any},
    Sign{"ts", to_word("as in English cats"), any},
    Sign{"dz", to_word("as in English beds"), any},
    Sign{"ʃ", to_word("as in English ship"), any},
    Sign{"ʒ", to_word("as in English measure"), any},
    Sign{"ç", to_word("the soft ch of German ich"), any},
    Sign{"x", to_word("the hard ch of German ach"), any},
    Sign{"χ", to_word("the hard ch of German ach"), any},
    Sign{"ɬ", to_word("l without voice, the breath beside the tongue"), any},
    Sign{"ɕ", to_word("a soft sh, the tongue as for j"), any},
    Sign{"ʑ", to_word("ɕ with voice"), any},
    Sign{"ʂ", to_word("sh with the tip of the tongue drawn back"), any},
    Sign{"ʐ", to_word("ʂ with voice"), any},
    Sign{"ɧ", to_word("sh with the lips rounded, farther back"), any},
    Sign{"θ", to_word("as in English thin"), any},
    Sign{"ð", to_word("as in English this"), any},
    Sign{"β", to_word("b without closing the lips"), any},
    Sign{"ɣ", to_word("g without closing"), any},
    Sign{"ŋ", to_word("as in English sing"), any},
    Sign{"ɲ", to_word("as ny in English canyon"), any},
    Sign{"ʎ", to_word("as lli in English million"), any},
    Sign{"ɹ", to_word("the English r, not rolled"), Language::english},
    Sign{"ɾ", to_word("r of one tap"), any},
    Sign{"r", to_word("r rolled or tapped with the tip of the tongue"), any},
    Sign{"z", to_word("s with voice, as in English zeal"), any},
    Sign{"j", to_word("as in English yes"), any},
    Sign{"w", to_word("as in English we"), any},
    Sign{"ɥ", to_word("y passed quickly"), any},
    Sign{"ʲ", to_word("the consonant before it is soft, the tongue as for j"), any},
    Sign{"ː", to_word("the vowel before it is long"), any},
    Sign{"ˈ", to_word("the syllable after it is stressed"), any},
};

constexpr std::string_view tie = "‿";

} // namespace

void add_key(SungText& text, Language language) {
    std::array<std::string, signs_known.size()> examples;
    std::string tied;
    for (auto const& line : text.lines)
        for (std::size_t w = 0; w < line.words.size(); ++w) {
            auto const& word = line.words[w];
            auto const shown = std::string(without_punctuation(word.written));
            if (word.joined && tied.empty() && w + 1 < line.words.size())
                tied = shown + std::string(tie) + std::string(without_punctuation(line.words[w + 1].written));
            std::string_view rest = word.ipa;
            while (!rest.empty()) {
                std::size_t best = signs_known.size();
                for (std::size_t i = 0; i < signs_known.size(); ++i) {
                    auto const& sign = signs_known[i];
                    bool const fits = sign.only == any || sign.only == main_language(language);
                    bool const longer =
                        best == signs_known.size() || sign.sign.size() > signs_known[best].sign.size();
                    if (fits && longer && rest.starts_with(sign.sign)) best = i;
                }
                if (best == signs_known.size()) {
                    rest.remove_prefix(1);
                    continue;
                }
                if (examples[best].empty()) examples[best] = shown;
                rest.remove_prefix(signs_known[best].sign.size());
            }
        }
    for (std::size_t i = 0; i < signs_known.size(); ++i)
        if (!examples[i].empty())
            text.key.push_back(
                {std::string(signs_known[i].sign), std::string(reworded(signs_known[i].says)), examples[i]});
    if (!tied.empty())
        text.key.push_back({std::string(tie), worded("the words are sung into one another"), tied});
}

} // namespace vowelway::diction
