// SPDX-License-Identifier: MIT
#include "diction/regular/regular.hpp"

#include "diction/syllables/grouping.hpp"
#include "diction/synthesis/synthesiser.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

struct RegularVowel {
    char32_t base, mark;
    std::string_view ipa;
};

constexpr char32_t double_acute = 0x30B, ogonek = 0x328;

constexpr RegularVowel finnish_vowels[] = {{U'a', 0, "ɑ"},
                                           {U'e', 0, "e"},
                                           {U'i', 0, "i"},
                                           {U'o', 0, "o"},
                                           {U'u', 0, "u"},
                                           {U'y', 0, "y"},
                                           {U'a', mark::diaeresis, "æ"},
                                           {U'o', mark::diaeresis, "ø"},
                                           {U'a', mark::ring, "oː"}};
constexpr RegularVowel hungarian_vowels[] = {{U'a', 0, "ɒ"},
                                             {U'a', mark::acute, "aː"},
                                             {U'e', 0, "ɛ"},
                                             {U'e', mark::acute, "eː"},
                                             {U'i', 0, "i"},
                                             {U'i', mark::acute, "iː"},
                                             {U'o', 0, "o"},
                                             {U'o', mark::acute, "oː"},
                                             {U'u', 0, "u"},
                                             {U'u', mark::acute, "uː"},
                                             {U'o', mark::diaeresis, "ø"},
                                             {U'o', double_acute, "øː"},
                                             {U'u', mark::diaeresis, "y"},
                                             {U'u', double_acute, "yː"}};
constexpr RegularVowel czech_vowels[] = {{U'a', 0, "a"},
                                         {U'a', mark::acute, "aː"},
                                         {U'e', 0, "ɛ"},
                                         {U'e', mark::acute, "ɛː"},
                                         {U'e', mark::caron, "ɛ"},
                                         {U'i', 0, "ɪ"},
                                         {U'i', mark::acute, "iː"},
                                         {U'y', 0, "ɪ"},
                                         {U'y', mark::acute, "iː"},
                                         {U'o', 0, "o"},
                                         {U'o', mark::acute, "oː"},
                                         {U'u', 0, "u"},
                                         {U'u', mark::acute, "uː"},
                                         {U'u', mark::ring, "uː"}};
constexpr RegularVowel polish_vowels[] = {{U'a', 0, "a"},           {U'a', ogonek, "ɔ̃"}, {U'e', 0, "ɛ"},
                                          {U'e', ogonek, "ɛ̃"},      {U'i', 0, "i"},      {U'o', 0, "ɔ"},
                                          {U'o', mark::acute, "u"}, {U'u', 0, "u"},      {U'y', 0, "ɨ"}};

std::string_view regular_vowel(std::span<RegularVowel const> list, Letter const& letter) {
    for (auto const& one : list)
        if (one.base == letter.base && one.mark == letter.mark) return one.ipa;
    return {};
}

std::span<RegularVowel const> regular_vowels(Language language) {
    switch (language) {
    case Language::finnish:
        return finnish_vowels;
    case Language::hungarian:
        return hungarian_vowels;
    case Language::czech:
        return czech_vowels;
    default:
        return polish_vowels;
    }
}

bool letter_in(char32_t c, std::u32string_view set) { return c && set.find(c) != std::u32string_view::npos; }

class RegularReader {
  public:
    RegularReader(Word const& word, Language language)
        : word_(word), language_(language), list_(regular_vowels(language)) {}

    std::vector<Nucleus> read() {
        for (std::size_t i = 0; i < word_.size(); ++i) {
            if (vowel(i)) {
                if (!leads(i)) i = add(i);
            } else if (language_ == Language::czech && syllabic(i)) {
                nuclei_.push_back({{}, {vowel_of("ə"), i}, {}});
            }
        }
        if (nuclei_.size() > 1)
            nuclei_[language_ == Language::polish ? nuclei_.size() - 2 : 0].stressed = true;
        return std::move(nuclei_);
    }

  private:
    char32_t at(std::size_t i) const { return i < word_.size() ? word_[i].base : U'\0'; }
    char32_t mark_at(std::size_t i) const { return i < word_.size() ? word_[i].mark : U'\0'; }
    bool vowel(std::size_t i) const { return i < word_.size() && !regular_vowel(list_, word_[i]).empty(); }
    bool consonant(std::size_t i) const { return i < word_.size() && is_letter(at(i)) && !vowel(i); }

    // Polish i before a vowel only softens s, z, c, n; it leads in after the others.
    bool leads(std::size_t i) {
        if (language_ != Language::polish || at(i) != U'i' || !vowel(i + 1)) return false;
        if (i > 0 && !letter_in(at(i - 1), U"szcn")) before_.push_back({glide_of("i"), i});
        return true;
    }

    // vlk, srdce: r and l carry the syllable between consonants.
    bool syllabic(std::size_t i) const {
        return letter_in(at(i), U"rl") && mark_at(i) == 0 && i > 0 && consonant(i - 1) &&
               !letter_in(at(i - 1), U"rl") && !vowel(i + 1);
    }

    bool pair(std::size_t i) const {
        char32_t const a = at(i), b = at(i + 1);
        bool const plain = vowel(i + 1) && mark_at(i + 1) == 0;
        if (language_ == Language::czech)
            return plain && b == U'u' && letter_in(a, U"aoe") && mark_at(i) == 0;
        if (language_ == Language::polish) return plain && b == U'u' && letter_in(a, U"ae") && i == 0;
        if (language_ != Language::finnish || !vowel(i + 1)) return false;
        if (plain && b == U'i') return a != U'i';
        bool const first = nuclei_.size() == 1;
        bool const to_close = plain && ((b == U'u' && letter_in(a, U"aeoi")) ||
                                        (b == U'y' && (letter_in(a, U"ei") || mark_at(i) != 0)));
        bool const opening = (a == U'u' && b == U'o' && plain) || (a == U'i' && b == U'e') ||
                             (a == U'y' && b == U'o' && !plain);
        return first && (to_close || opening);
    }

    std::size_t add(std::size_t i) {
        auto ipa = std::string(regular_vowel(list_, word_[i]));
        bool const soft = language_ == Language::czech && mark_at(i) == mark::caron && i > 0 &&
                          letter_in(at(i - 1), U"bpvfm");
        if (soft) before_.push_back({glide_of("i"), i});
        if (language_ == Language::polish && at(i) == U'e' && mark_at(i) == ogonek && i + 1 == word_.size())
            ipa = "ɛ";
        bool const twice =
            language_ == Language::finnish && at(i + 1) == at(i) && mark_at(i + 1) == mark_at(i);
        if (twice) ipa += "ː";
        nuclei_.push_back({std::move(before_), {vowel_of(ipa), i}, {}});
        before_.clear();
        if (twice) return i + 1;
        if (!pair(i)) return i;
        nuclei_.back().after.push_back({glide_of(regular_vowel(list_, word_[i + 1])), i + 1});
        return i + 1;
    }

    Word const& word_;
    Language language_;
    std::span<RegularVowel const> list_;
    std::vector<Nucleus> nuclei_;
    std::vector<Sound> before_;
};

} // namespace

Sounds regular(Word const& word, Language language) {
    Sounds out;
    out.nuclei = RegularReader(word, language).read();
    out.said = phones(Synthesiser::instance().ipa(spoken(word), language)); // for its consonants
    return out;
}

} // namespace vowelway::diction
