// SPDX-License-Identifier: MIT
// Nuclei onto the letters that write them.
#include "diction/syllables/grouping.hpp"

#include "core/utf8.hpp"

#include <algorithm>
#include <limits>

namespace vowelway::diction {

namespace {

// The vowels a letter commonly writes, in any of the languages: a guide for placing, not a rule.
std::string_view commonly(char32_t letter) {
    switch (letter) {
    case U'a':
    case U'æ':
        return "aɑæɐɛeɔɒoəɪ";
    case U'e':
        return "eɛəœøɪiɐaɜ";
    case U'i':
    case U'ı':
        return "iɪɨaɛəɜ";
    case U'o':
    case U'œ':
    case U'ø':
        return "oɔɒøœuʊəʌɜɪ";
    case U'u':
        return "uʊyʏʉɵʌøœəɪiɔoɜ";
    case U'y':
        return "yʏiɪaɨəʌ";
    default:
        return "";
    }
}

// The vowels that two letters write together.
std::string_view together(char32_t first, char32_t second) {
    struct Pair {
        char32_t first, second;
        std::string_view vowels;
    };
    static constexpr Pair pairs[] = {{U'a', U'i', "eɛaə"}, {U'a', U'y', "eɛa"}, {U'a', U'u', "oɔa"},
                                     {U'e', U'i', "ɛeai"}, {U'e', U'u', "øœɔ"}, {U'o', U'u', "uaʊʌə"},
                                     {U'o', U'i', "aɔ"},   {U'i', U'e', "iɪ"},  {U'o', U'o', "uʊ"},
                                     {U'e', U'a', "iɛɪɑ"}, {U'e', U'e', "iɪe"}, {U'o', U'a', "əoɔ"},
                                     {U'o', U'e', "øœe"},  {U'a', U'e', "ɛeɛ"}};
    for (auto const& pair : pairs)
        if (pair.first == first && pair.second == second) return pair.vowels;
    return {};
}

double misfit(char32_t letter, char32_t next, Vowel const& vowel) {
    double best = 1;
    if (together(letter, next).find(utf8::encode(vowel.base)) != std::string_view::npos) return 0;
    auto rest = commonly(letter);
    double rank = 0;
    while (auto const c = utf8::eat(rest)) {
        if (*c == vowel.base) best = std::min(best, 0.04 * rank);
        rank += 1;
    }
    return best;
}

/// The letters of a word as places for nuclei. Passing over a vowel letter costs little beside another vowel
/// letter (it writes the same vowel) and for a last e, much elsewhere.
class Letters {
  public:
    explicit Letters(Word const& word)
        : word_(word), passed_(word.size() + 1, 0), consonants_(word.size() + 1, 0) {
        for (std::size_t i = 0; i < word.size(); ++i) {
            passed_[i + 1] = passed_[i] + pass(i);
            bool const consonant = is_letter(word[i].base) && !vowel(i) && word[i].base != U'h' &&
                                   word[i].base != U'w' && word[i].base != U'j';
            consonants_[i + 1] = consonants_[i] + consonant;
        }
    }

    std::size_t size() const { return word_.size(); }
    bool vowel(std::size_t i) const { return i < size() && is_vowel_letter(word_[i].base); }

    /// Cost of passing over the first i letters.
    double passed(std::size_t i) const { return passed_[i]; }
    /// Whether consonants are written between two letters.
    bool parted(std::size_t left, std::size_t right) const {
        return consonants_[right] > consonants_[left + 1];
    }

    /// How badly a nucleus fits a letter.
    double misfit_at(std::size_t i, Nucleus const& nucleus) const {
        auto const& v = nucleus.held.vowel;
        if (!vowel(i)) return word_[i].base == U'w' || word_[i].base == U'j' ? 1.2 : 2.5;
        bool const nasal_letter =
            vowel(i + 1) ||
            (i + 1 < size() && (word_[i + 1].base == U'n' || word_[i + 1].base == U'm') && !vowel(i + 2));
        double const glide = !nucleus.before.empty() && !(i > 0 && vowel(i - 1)) ? 0.4 : 0;
        return glide + misfit(word_[i].base, i + 1 < size() ? word_[i + 1].base : U'\0', v) +
               (v.nasal && !nasal_letter ? 0.6 : 0);
    }

  private:
    double pass(std::size_t i) const {
        if (!vowel(i)) return 0.0;
        auto const& letter = word_[i];
        std::size_t const m = size();
        bool const last_e = i + 1 == m || (i + 2 == m && word_[i + 1].base == U's') ||
                            (i + 3 == m && word_[i + 1].base == U'n' && word_[i + 2].base == U't');
        if (letter.base == U'e' && !letter.mark && last_e) return 0.1;
        if (i > 0 && !letter.mark && !together(word_[i - 1].base, letter.base).empty()) return 0.1;
        if ((i > 0 && vowel(i - 1)) || vowel(i + 1)) return letter.mark ? 0.5 : 0.25;
        if (letter.base == U'e') return i > 0 ? 0.2 : 0.5;
        return 1.0;
    }

    Word const& word_;
    std::vector<double> passed_;
    std::vector<std::size_t> consonants_; // among the first i letters
};

// Fewer letters than nuclei: in order, the last letter for all that are left.
void crowd(std::vector<Nucleus>& nuclei, std::size_t letters) {
    for (std::size_t j = 0; j < nuclei.size(); ++j) {
        nuclei[j].held.letter = std::min(j, letters - 1);
        for (auto& sound : nuclei[j].after) sound.letter = nuclei[j].held.letter;
    }
}

/// Least cost over increasing letters, one for each nucleus: of the nuclei up to k, the last of them on
/// letter i.
struct Ways {
    std::vector<std::vector<double>> cost;
    std::vector<std::vector<std::size_t>> from; // letter of the nucleus before
};

// Consonants between two nuclei should be written between their letters, and only then.
Ways ways_of(std::vector<Nucleus> const& nuclei, Letters const& letters) {
    constexpr double far = std::numeric_limits<double>::infinity();
    std::size_t const n = nuclei.size(), m = letters.size();
    Ways ways{std::vector(n, std::vector<double>(m, far)), std::vector(n, std::vector<std::size_t>(m, 0))};
    for (std::size_t k = 0; k < n; ++k)
        for (std::size_t i = k; i < m; ++i) {
            double const here = letters.misfit_at(i, nuclei[k]);
            if (k == 0) {
                ways.cost[0][i] = letters.passed(i) + here;
                continue;
            }
            for (std::size_t j = k - 1; j < i; ++j) {
                double const joint = letters.parted(j, i) == nuclei[k].meets ? 0.8 : 0;
                double const total =
                    ways.cost[k - 1][j] + letters.passed(i) - letters.passed(j + 1) + joint + here;
                if (total < ways.cost[k][i]) {
                    ways.cost[k][i] = total;
                    ways.from[k][i] = j;
                }
            }
        }
    return ways;
}

// Sets the letters of what is held on the cheapest way; returns the worst fit.
double follow_best(Ways const& ways, std::vector<Nucleus>& nuclei, Letters const& letters) {
    std::size_t const n = nuclei.size(), m = letters.size();
    auto const& last = ways.cost[n - 1];
    std::size_t at = n - 1;
    for (std::size_t i = n - 1; i < m; ++i)
        if (last[i] + letters.passed(m) - letters.passed(i + 1) <
            last[at] + letters.passed(m) - letters.passed(at + 1))
            at = i;
    double worst = 0;
    for (std::size_t k = n; k-- > 0;) {
        nuclei[k].held.letter = at;
        worst = std::max(worst, std::min(1.0, letters.misfit_at(at, nuclei[k])));
        at = ways.from[k][at];
    }
    return worst;
}

void place_glides_after(Nucleus& nucleus, std::size_t limit, Letters const& letters) {
    std::size_t at = nucleus.held.letter;
    for (auto& sound : nucleus.after) {
        if (at + 1 < limit && letters.vowel(at + 1)) ++at;
        sound.letter = at;
    }
}

// A glide into the vowel is written by the vowel letter before it, where there is one to spare.
void place_glides_before(Nucleus& nucleus, std::size_t least, Letters const& letters) {
    std::size_t at = nucleus.held.letter;
    for (auto sound = nucleus.before.rbegin(); sound != nucleus.before.rend(); ++sound) {
        if (at > least && letters.vowel(at - 1)) --at;
        sound->letter = at;
    }
}

std::size_t last_letter(Nucleus const& nucleus) {
    return nucleus.after.empty() ? nucleus.held.letter : nucleus.after.back().letter;
}

} // namespace

double place_on_letters(std::vector<Nucleus>& nuclei, Word const& word) {
    std::size_t const n = nuclei.size(), m = word.size();
    if (n == 0 || m == 0) return n == 0 ? 0 : 1;
    if (n > m) {
        crowd(nuclei, m);
        return 1;
    }
    Letters const letters(word);
    double const worst = follow_best(ways_of(nuclei, letters), nuclei, letters);
    std::size_t free = 0; // the first letter that writes nothing yet
    for (std::size_t j = 0; j < n; ++j) {
        place_glides_after(nuclei[j], j + 1 < n ? nuclei[j + 1].held.letter : m, letters);
        place_glides_before(nuclei[j], free, letters);
        free = last_letter(nuclei[j]) + 1;
    }
    return worst;
}

void drop_unwritten_glides(std::vector<Nucleus>& nuclei) {
    for (auto& nucleus : nuclei)
        std::erase_if(nucleus.before,
                      [&](Sound const& sound) { return sound.letter == nucleus.held.letter; });
}

} // namespace vowelway::diction
