// SPDX-License-Identifier: MIT
// Hebrew and Church Slavonic as editions print them under notes, in Latin letters.
// Hebrew: the five vowels of the modern (Sephardi) pronunciation, stress on the last syllable but for
// segolates and some endings. Source: A. Laufer, "Hebrew", Handbook of the IPA (1999), from memory. Church
// Slavonic in the Russian manner: every vowel keeps its colour without stress (no a for o), e is ɛ. Source:
// A. Gamanovich, Grammatika tserkovnoslavianskogo iazyka (1964), on reading aloud, from memory.
#include "diction/syllables/grouping.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

class Transliteration {
  public:
    Transliteration(Word const& word, Language language)
        : word_(word), language_(language), spelled_(in_ascii(word)) {}

    std::vector<Nucleus> read() {
        for (std::size_t i = 0; i < word_.size(); ++i) {
            if (glide_before(i)) {
                before_.push_back({glide_of("i"), i});
            } else if (vowel(i)) {
                i = add(i);
            }
        }
        if (nuclei_.size() > 1)
            if (auto const k = stressed()) nuclei_[*k].stressed = true;
        return std::move(nuclei_);
    }

  private:
    char32_t at(std::size_t i) const { return i < word_.size() ? word_[i].base : U'\0'; }
    static bool open(char32_t c) { return c == U'a' || c == U'e' || c == U'o' || c == U'u'; }
    bool slavonic() const { return language_ == Language::church_slavonic; }
    // y writes ɨ between consonants of Church Slavonic ("ty", "syna"), else a glide.
    bool vowel(std::size_t i) const {
        char32_t const c = at(i);
        if (open(c) || c == U'i') return true;
        return c == U'y' && slavonic() && !open(at(i + 1)) &&
               !(i > 0 && (open(at(i - 1)) || at(i - 1) == U'i' || at(i - 1) == U'y'));
    }
    // ya, ye, yu; "Mariya", "Bozhiem": i between a consonant and a vowel keeps its syllable.
    bool glide_before(std::size_t i) const {
        char32_t const c = at(i), next = at(i + 1);
        bool const front = open(next) || next == U'i';
        if (c == U'y' || c == U'j')
            return front && !(c == U'y' && next == U'i' && slavonic() && i > 0 && !open(at(i - 1)));
        return c == U'i' && open(next) && (i == 0 || open(at(i - 1)));
    }
    bool glide_after(std::size_t i) const {
        char32_t const c = at(i), next = at(i + 1);
        if (next != U'i' && next != U'y' && next != U'j') return false;
        if (word_[i + 1].mark) return false;
        if (open(at(i + 2)) || (next != U'i' && at(i + 2) == U'i'))
            return false; // it leads into the next vowel
        if (next == U'i') {
            if (slavonic())
                return c == U'y' ||
                       (c != U'i' && (i + 2 == word_.size() || at(i + 2) == U's' || at(i + 2) == U't'));
            return c == U'a' || c == U'e' || c == U'o' || c == U'u';
        }
        return true;
    }

    std::size_t add(std::size_t i) {
        std::string_view ipa = "ɨ";
        switch (at(i)) {
        case U'a':
            ipa = "a";
            break;
        case U'e':
            ipa = "ɛ";
            break;
        case U'i':
            ipa = "i";
            break;
        case U'o':
            ipa = slavonic() ? "o" : "ɔ";
            break;
        case U'u':
            ipa = "u";
            break;
        default:
            break;
        }
        nuclei_.push_back({std::move(before_), {vowel_of(ipa), i}, {}});
        before_.clear();
        if (at(i + 1) == at(i) && !slavonic() && !word_[i + 1].mark) return i + 1; // "aa", "ee" are one
        if (!glide_after(i)) return i;
        nuclei_.back().after.push_back({glide_of("i"), i + 1});
        return i + 1;
    }

    std::optional<std::size_t> stressed() const {
        for (std::size_t k = 0; k < nuclei_.size(); ++k)
            if (word_[nuclei_[k].held.letter].mark == mark::acute) return k;
        if (slavonic()) return std::nullopt; // nothing in the letters tells it
        std::size_t const n = nuclei_.size();
        auto const ends = [&](std::string_view ending) { return spelled_.ends_with(ending); };
        for (auto const ending :
             {"ayim", "aim", "einu", "enu", "eicha", "echa", "eycha", "eha", "anu", "ti", "tanu", "ayil"})
            if (ends(ending) && spelled_.size() > std::string_view(ending).size()) return n - 2;
        // Segolates: "melech", "eretz", "nefesh", "kodesh".
        auto const& last = nuclei_[n - 1];
        auto const& left = nuclei_[n - 2];
        bool const consonant_behind = last.held.letter + 1 < word_.size() &&
                                      is_letter(at(last.held.letter + 1)) && at(word_.size() - 1) != U'm' &&
                                      at(word_.size() - 1) != U'h';
        bool const segolate =
            n == 2 && last.held.vowel.base == U'ɛ' &&
            (left.held.vowel.base == U'ɛ' || left.held.vowel.base == U'ɔ') && left.after.empty() &&
            (consonant_behind || ends("lech") || ends("lechem") || ends("lehem") || ends("sh"));
        if (segolate) return n - 2;
        if (ends("chem") || ends("hem")) return n == 2 && spelled_.starts_with("le") ? 0 : n - 1;
        return n - 1;
    }

    Word const& word_;
    Language language_;
    std::string spelled_;
    std::vector<Nucleus> nuclei_;
    std::vector<Sound> before_;
};

} // namespace

Sounds transliterated(Word const& word, Language language) {
    Sounds out;
    out.nuclei = Transliteration(word, language).read();
    return out;
}

} // namespace vowelway::diction
