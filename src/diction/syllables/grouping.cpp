// SPDX-License-Identifier: MIT
#include "diction/syllables/grouping.hpp"

#include "core/utf8.hpp"

#include <algorithm>
#include <limits>

namespace vowelway::diction {

namespace {

std::optional<Vowel> consonant_glide(Phone const& phone) {
    if (phone.vowel) return std::nullopt;
    if (phone.text == "j") return glide_of("i");
    if (phone.text == "w") return glide_of("u");
    if (phone.text == "ɥ") return glide_of("y");
    return std::nullopt;
}

} // namespace

std::vector<Nucleus> gather(std::vector<Phone> const& phones, std::span<std::string_view const> falling) {
    std::vector<Nucleus> out;
    std::vector<Sound> before;
    bool after_vowel = false, meets = false; // nothing, or no more than a glide, since the last vowel
    for (std::size_t i = 0; i < phones.size(); ++i) {
        auto const& phone = phones[i];
        bool const vowel_next = i + 1 < phones.size() && phones[i + 1].vowel && !phones[i + 1].vowel->glide;
        if (!phone.vowel) {
            if (phone.syllabic) out.push_back({{}, {vowel_of("ə"), 0}, {}});
            auto const glide = consonant_glide(phone);
            if (glide && vowel_next)
                before.push_back({*glide, 0});
            else if (glide && after_vowel && out.back().after.empty())
                out.back().after.push_back({*glide, 0});
            after_vowel = false;
            meets = meets && glide;
            continue;
        }
        auto vowel = *phone.vowel;
        if (after_vowel && !phone.boundary_before && out.back().after.empty() && phone.stress == 0) {
            auto const pair = utf8::encode(out.back().held.vowel.base) + utf8::encode(vowel.base);
            if (vowel.glide || std::find(falling.begin(), falling.end(), pair) != falling.end()) {
                vowel.glide = true;
                vowel.length = VowelLength::normal;
                out.back().after.push_back({vowel, 0});
                continue;
            }
        }
        if (vowel.glide && vowel_next) {
            before.push_back({vowel, 0});
            continue;
        }
        vowel.glide = false;
        out.push_back(
            {std::move(before), {vowel, 0}, {}, false, phone.stress == 2, phone.stress == 1, meets});
        before.clear();
        after_vowel = meets = true;
    }
    return out;
}

bool is_vowel_letter(char32_t c) {
    return c == U'a' || c == U'e' || c == U'i' || c == U'o' || c == U'u' || c == U'y' || c == U'æ' ||
           c == U'œ' || c == U'ø' || c == U'ı';
}

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

} // namespace

double place_on_letters(std::vector<Nucleus>& nuclei, Word const& word) {
    // Least cost over increasing letters, one for each nucleus. Passing over a vowel letter costs little
    // beside another vowel letter (it writes the same vowel) and for a last e, much elsewhere. Consonants
    // between two nuclei should be written between their letters, and only then.
    std::size_t const n = nuclei.size(), m = word.size();
    if (n == 0 || m == 0) return n == 0 ? 0 : 1;
    auto const vowel = [&](std::size_t i) { return i < m && is_vowel_letter(word[i].base); };
    auto const pass = [&](std::size_t i) {
        if (!vowel(i)) return 0.0;
        bool const last_e = i + 1 == m || (i + 2 == m && word[i + 1].base == U's') ||
                            (i + 3 == m && word[i + 1].base == U'n' && word[i + 2].base == U't');
        if (word[i].base == U'e' && !word[i].mark && last_e) return 0.1;
        if (i > 0 && !word[i].mark && !together(word[i - 1].base, word[i].base).empty()) return 0.1;
        if ((i > 0 && vowel(i - 1)) || vowel(i + 1)) return word[i].mark ? 0.5 : 0.25;
        if (word[i].base == U'e') return i > 0 ? 0.2 : 0.5;
        return 1.0;
    };
    std::vector<double> passed(m + 1, 0);          // cost of passing over the first i letters
    std::vector<std::size_t> consonants(m + 1, 0); // among the first i letters
    for (std::size_t i = 0; i < m; ++i) {
        passed[i + 1] = passed[i] + pass(i);
        consonants[i + 1] = consonants[i] + (is_letter(word[i].base) && !vowel(i) && word[i].base != U'h' &&
                                             word[i].base != U'w' && word[i].base != U'j');
    }
    auto const fit = [&](std::size_t k, std::size_t i) {
        auto const& v = nuclei[k].held.vowel;
        if (!vowel(i)) return word[i].base == U'w' || word[i].base == U'j' ? 1.2 : 2.5;
        bool const nasal_letter =
            vowel(i + 1) ||
            (i + 1 < m && (word[i + 1].base == U'n' || word[i + 1].base == U'm') && !vowel(i + 2));
        double const glide = !nuclei[k].before.empty() && !(i > 0 && vowel(i - 1)) ? 0.4 : 0;
        return glide + misfit(word[i].base, i + 1 < m ? word[i + 1].base : U'\0', v) +
               (v.nasal && !nasal_letter ? 0.6 : 0);
    };
    if (n > m) { // fewer letters than nuclei
        for (std::size_t j = 0; j < n; ++j) nuclei[j].held.letter = std::min(j, m - 1);
        for (auto& nucleus : nuclei)
            for (auto& sound : nucleus.after) sound.letter = nucleus.held.letter;
        return 1;
    }
    constexpr double far = std::numeric_limits<double>::infinity();
    std::vector<std::vector<double>> cost(n, std::vector<double>(m, far));
    std::vector<std::vector<std::size_t>> from(n, std::vector<std::size_t>(m, 0));
    for (std::size_t k = 0; k < n; ++k)
        for (std::size_t i = k; i < m; ++i) {
            double const here = fit(k, i);
            if (k == 0) {
                cost[0][i] = passed[i] + here;
                continue;
            }
            for (std::size_t j = k - 1; j < i; ++j) {
                bool const parted = consonants[i] > consonants[j + 1];
                double const joint = parted == nuclei[k].meets ? 0.8 : 0;
                double const total = cost[k - 1][j] + passed[i] - passed[j + 1] + joint + here;
                if (total < cost[k][i]) {
                    cost[k][i] = total;
                    from[k][i] = j;
                }
            }
        }
    std::size_t at_letter = n - 1;
    for (std::size_t i = n - 1; i < m; ++i)
        if (cost[n - 1][i] + passed[m] - passed[i + 1] <
            cost[n - 1][at_letter] + passed[m] - passed[at_letter + 1])
            at_letter = i;
    double worst = 0;
    for (std::size_t k = n; k-- > 0;) {
        nuclei[k].held.letter = at_letter;
        worst = std::max(worst, std::min(1.0, fit(k, at_letter)));
        at_letter = from[k][at_letter];
    }
    for (std::size_t j = 0; j < n; ++j) {
        std::size_t const limit = j + 1 < n ? nuclei[j + 1].held.letter : m;
        std::size_t at = nuclei[j].held.letter;
        for (auto& sound : nuclei[j].after) {
            if (at + 1 < limit && vowel(at + 1)) ++at;
            sound.letter = at;
        }
        // A glide into the vowel is written by the vowel letter before it, where there is one to spare.
        std::size_t const least = j > 0 ? (nuclei[j - 1].after.empty() ? nuclei[j - 1].held.letter
                                                                       : nuclei[j - 1].after.back().letter) +
                                              1
                                        : 0;
        std::size_t glide_at = nuclei[j].held.letter;
        for (auto sound = nuclei[j].before.rbegin(); sound != nuclei[j].before.rend(); ++sound) {
            if (glide_at > least && vowel(glide_at - 1)) --glide_at;
            sound->letter = glide_at;
        }
    }
    return worst;
}

void drop_unwritten_glides(std::vector<Nucleus>& nuclei) {
    for (auto& nucleus : nuclei)
        std::erase_if(nucleus.before,
                      [&](Sound const& sound) { return sound.letter == nucleus.held.letter; });
}

std::vector<std::size_t> divide(std::vector<Nucleus> const& nuclei, Word const& word, Language language) {
    std::vector<std::size_t> starts;
    auto const base = [&](std::size_t i) { return word[i].base; };
    for (std::size_t k = 0; k < nuclei.size(); ++k) {
        if (k == 0) {
            starts.push_back(0);
            continue;
        }
        auto const& left = nuclei[k - 1];
        std::size_t from = (left.after.empty() ? left.held.letter : left.after.back().letter) + 1;
        std::size_t const to =
            nuclei[k].before.empty() ? nuclei[k].held.letter : nuclei[k].before.front().letter;
        // Vowel letters that write no vowel of their own stay with the vowel before them, a silent i or u
        // after c, g, q with the one after.
        while (from < to && is_vowel_letter(base(from))) ++from;
        std::size_t cut = to;
        while (cut > from && is_vowel_letter(base(cut - 1))) --cut;
        if (cut > from) {
            --cut;
            char32_t const last = base(cut);
            char32_t const before = cut > from ? base(cut - 1) : 0;
            bool const liquid = (last == U'l' || last == U'r') &&
                                std::u32string_view(U"bcdfgptv").find(before) != std::u32string_view::npos &&
                                before;
            bool const digraph = (last == U'h' && before &&
                                  std::u32string_view(U"cpstgr").find(before) != std::u32string_view::npos) ||
                                 (last == U'n' && before == U'g') ||
                                 (last == U'c' && before == U's' && (base(to) == U'e' || base(to) == U'i'));
            if (liquid || digraph) --cut;
            if (digraph && last == U'h' && before == U'c' && cut > from && base(cut - 1) == U's') --cut;
            if (language == Language::italian && cut > from && base(cut - 1) == U's' && base(cut) != U's')
                --cut;
        }
        starts.push_back(std::max(cut, starts.back()));
    }
    return starts;
}

} // namespace vowelway::diction
