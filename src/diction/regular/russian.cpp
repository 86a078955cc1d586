// SPDX-License-Identifier: MIT
#include "diction/regular/regular.hpp"
#include "diction/syllables/grouping.hpp"
#include "diction/synthesis/synthesiser.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

bool cyrillic_in(char32_t c, std::u32string_view set) {
    return c && set.find(c) != std::u32string_view::npos;
}

/// й is a consonant, though its letter is и with a breve.
bool russian_vowel(Letter const& letter) {
    return cyrillic_in(letter.base, U"аеёиоуыэюя") && letter.mark != mark::breve;
}

/// ё, whole or with its dots apart.
bool is_yo(Letter const& letter) {
    return letter.base == U'ё' || (letter.base == U'е' && letter.mark == mark::diaeresis);
}

/// Which of the written vowels is stressed: ё, else as the synthesiser has it; nothing where that has another
/// number of vowels.
std::optional<std::size_t> russian_stress(Word const& word, std::vector<std::size_t> const& written,
                                          std::vector<Phone> const& said) {
    for (std::size_t k = 0; k < written.size(); ++k)
        if (is_yo(word[written[k]]) || word[written[k]].mark == mark::acute) return k;
    // Words of songs that the synthesiser stresses elsewhere.
    constexpr std::string_view on_the_last = " моя твоя своя мою твою свою мои твои свои она они оно меня "
                                             "тебя себя одна моему твоему своему тому душа душе "
                                             "гора крыло село светло темно змея глаза поля моря леса луга "
                                             "снега слова облака голоса берега паруса ночной "
                                             "красоты луны ";
    constexpr std::string_view on_the_second = " звездою рукою душою береза рябина ";
    constexpr std::string_view on_the_first = " красная красный берег чудное чудный чудная чудной ";
    auto const spelled = " " + lower(word) + " ";
    if (on_the_last.find(spelled) != std::string_view::npos) return written.size() - 1;
    if (on_the_second.find(spelled) != std::string_view::npos) return 1;
    if (on_the_first.find(spelled) != std::string_view::npos) return 0;
    std::size_t count = 0;
    std::optional<std::size_t> found;
    for (auto const& phone : said) {
        if (!phone.vowel) continue;
        if (phone.stress == 2) found = count;
        ++count;
    }
    // "горько": it may add a vowel within consonants, behind the stress.
    return count >= written.size() && found < written.size() ? found : std::nullopt;
}

std::string_view russian_value(Word const& word, std::size_t i, bool strong, bool last) {
    char32_t const before = i > 0 ? word[i - 1].base : U'\0';
    bool const hard = cyrillic_in(before, U"жшц");
    switch (word[i].base) {
    case U'а':
        return "a";
    case U'о':
        return strong ? "o" : "a";
    case U'у':
    case U'ю':
        return "u";
    case U'ы':
        return "ɨ";
    case U'и':
        return hard ? "ɨ" : "i";
    case U'э':
        return strong ? "ɛ" : "ɪ";
    case U'я':
        return strong || last ? "a" : "ɪ";
    default: // е, ё
        if (is_yo(word[i])) return "o";
        return strong ? "ɛ" : hard ? "ɨ" : "ɪ";
    }
}

} // namespace

Sounds russian(Word const& word) {
    Sounds out;
    out.said = phones(Synthesiser::instance().ipa(spoken(word), Language::russian));
    std::vector<std::size_t> written;
    for (std::size_t i = 0; i < word.size(); ++i)
        if (russian_vowel(word[i])) written.push_back(i);
    auto const strong =
        written.size() == 1 ? std::optional<std::size_t>(0) : russian_stress(word, written, out.said);
    for (std::size_t k = 0; k < written.size(); ++k) {
        std::size_t const i = written[k];
        Nucleus nucleus{
            {}, {vowel_of(russian_value(word, i, !strong || k == *strong, i + 1 == word.size())), i}, {}};
        bool const iotated = cyrillic_in(word[i].base, U"еёюя") &&
                             (i == 0 || russian_vowel(word[i - 1]) || cyrillic_in(word[i - 1].base, U"ьъ"));
        if (iotated) nucleus.before.push_back({glide_of("i"), i});
        bool const short_i =
            i + 1 < word.size() &&
            (word[i + 1].base == U'й' || (word[i + 1].base == U'и' && word[i + 1].mark == mark::breve));
        if (short_i) nucleus.after.push_back({glide_of("i"), i + 1});
        nucleus.stressed = written.size() > 1 && strong && k == *strong;
        out.nuclei.push_back(std::move(nucleus));
    }
    return out;
}

} // namespace vowelway::diction
