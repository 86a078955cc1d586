// SPDX-License-Identifier: MIT
#include "diction/regular/regular.hpp"

#include "diction/syllables/grouping.hpp"

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
            return plain && b == U'u' && letter_in(a, U"aoe") && mark_at(i) == 0 &&
                   !stem_behind_prefix(i + 1);
        if (language_ == Language::polish)
            return plain && b == U'u' && letter_in(a, U"ae") && mark_at(i) == 0 && !stem_behind_prefix(i + 1);
        if (language_ != Language::finnish || !vowel(i + 1)) return false;
        if (plain && b == U'i') return a != U'i';
        bool const first = nuclei_.size() == 1;
        bool const to_close = plain && ((b == U'u' && letter_in(a, U"aeoi")) ||
                                        (b == U'y' && (letter_in(a, U"ei") || mark_at(i) != 0)));
        // Behind the first syllable only in an open one: "ju-rou-tu-a", but "ju-ro-us".
        if (to_close) return first || (consonant(i + 2) && vowel(i + 3));
        bool const ie = a == U'i' && b == U'e'; // "mie-li", but the plural "la-si-en"
        bool const plural = i + 3 == word_.size() && at(i + 2) == U'n';
        if (ie) return first || (consonant(i + 2) && !plural);
        return (a == U'u' && b == U'o' && plain) || (a == U'y' && b == U'o' && !plain);
    }

    // "na-u-čit", "ne-u-mím", "na-u-ka": the u begins the stem.
    bool stem_behind_prefix(std::size_t u) const {
        std::string before;
        for (std::size_t i = 0; i < u; ++i) before += at(i) < 0x80 ? static_cast<char>(at(i)) : '?';
        return before == "na" || before == "za" || before == "ne" || before == "nie";
    }

    // ę and ą are nasal before a fricative and ą at the end; before a stop the n or m is a consonant of its
    // own, before l there is none: "ręka" e-n-k, "ząb" o-m-p, "wziął" o.
    bool stays_nasal(std::size_t i) const {
        if (i + 1 >= word_.size()) return at(i) == U'a';
        return letter_in(at(i + 1), U"szwfh") || (at(i + 1) == U'r' && at(i + 2) == U'z') ||
               (at(i + 1) == U'c' && at(i + 2) == U'h');
    }

    // j, and Polish ł and Hungarian ly, glide out of a vowel where no vowel follows: "mój", "był", "ajtó".
    std::string_view consonant_glide_at(std::size_t j) const {
        if (language_ == Language::finnish || j >= word_.size()) return {};
        bool const ly = language_ == Language::hungarian && at(j) == U'l' && at(j + 1) == U'y';
        bool const vowel_next = vowel(j + (ly ? 2 : 1));
        if (vowel_next || (language_ == Language::hungarian && (at(j + 1) == at(j)))) return {};
        if (at(j) == U'j' || ly) return "i";
        return language_ == Language::polish && at(j) == U'ł' ? "u" : "";
    }

    std::size_t add(std::size_t i) {
        auto ipa = std::string(regular_vowel(list_, word_[i]));
        bool const soft = language_ == Language::czech && mark_at(i) == mark::caron && i > 0 &&
                          letter_in(at(i - 1), U"bpvf"); // after m it is an n: "mně"
        if (soft) before_.push_back({glide_of("i"), i});
        if (language_ == Language::polish && mark_at(i) == ogonek && !stays_nasal(i))
            ipa = at(i) == U'e' ? "ɛ" : "ɔ";
        bool const twice =
            language_ == Language::finnish && at(i + 1) == at(i) && mark_at(i + 1) == mark_at(i);
        if (twice) ipa += "ː";
        nuclei_.push_back({std::move(before_), {vowel_of(ipa), i}, {}});
        before_.clear();
        if (twice) return i + 1;
        if (auto const glide = consonant_glide_at(i + 1); !glide.empty()) {
            nuclei_.back().after.push_back({glide_of(glide), i + 1});
            return i + 1;
        }
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
    return out;
}

} // namespace vowelway::diction
