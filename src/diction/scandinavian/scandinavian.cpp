// SPDX-License-Identifier: MIT
// Swedish, Norwegian (bokmål) and Danish. The synthesiser tells the syllables, which of them are strong and
// where o is u; the colour of a vowel is then its letter's, long or short. Sources: C.-C. Elert, Allmän och
// svensk fonetik (1995); G. Kristoffersen, The Phonology of Norwegian (2000); H. Basbøll, The Phonology of
// Danish (2005); A. Hersey, "Scandinavian song" (on singing the three); from memory.
#include "diction/syllables/grouping.hpp"
#include "diction/synthesis/synthesiser.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

struct ScandinavianVowel {
    char32_t base, mark;
    std::string_view long_one, short_one;
};

constexpr ScandinavianVowel swedish_vowels[] = {{U'a', 0, "ɑː", "a"},
                                                {U'e', 0, "eː", "ɛ"},
                                                {U'e', mark::acute, "eː", "eː"},
                                                {U'i', 0, "iː", "ɪ"},
                                                {U'u', 0, "ʉː", "ɵ"},
                                                {U'y', 0, "yː", "ʏ"},
                                                {U'a', mark::ring, "oː", "ɔ"},
                                                {U'a', mark::diaeresis, "ɛː", "ɛ"},
                                                {U'o', mark::diaeresis, "øː", "œ"},
                                                {U'o', 0, "uː", "ɔ"}};
constexpr ScandinavianVowel norwegian_vowels[] = {
    {U'a', 0, "ɑː", "ɑ"}, {U'e', 0, "eː", "ɛ"}, {U'e', mark::acute, "eː", "eː"}, {U'i', 0, "iː", "ɪ"},
    {U'u', 0, "ʉː", "ʉ"}, {U'y', 0, "yː", "ʏ"}, {U'a', mark::ring, "oː", "ɔ"},   {U'æ', 0, "æː", "æ"},
    {U'ø', 0, "øː", "ø"}, {U'o', 0, "uː", "ɔ"}};
constexpr ScandinavianVowel danish_vowels[] = {
    {U'a', 0, "aː", "a"}, {U'e', 0, "eː", "ɛ"}, {U'e', mark::acute, "eː", "eː"}, {U'i', 0, "iː", "i"},
    {U'u', 0, "uː", "u"}, {U'y', 0, "yː", "y"}, {U'a', mark::ring, "ɔː", "ɔ"},   {U'æ', 0, "ɛː", "ɛ"},
    {U'ø', 0, "øː", "ø"}, {U'o', 0, "oː", "ɔ"}};

std::span<ScandinavianVowel const> scandinavian_vowels(Language language) {
    if (language == Language::swedish) return swedish_vowels;
    if (language == Language::norwegian) return norwegian_vowels;
    return danish_vowels;
}

/// Endings of foreign words that take the stress, on the vowel of that number from the end; of words with at
/// least so many vowels.
struct StressedEnding {
    std::string_view letters;
    std::size_t from_end, vowels;
};
constexpr StressedEnding stressed_endings[] = {
    {"tion", 1, 2},   {"sion", 1, 2}, {"sjon", 1, 2},  {"tionen", 2, 3}, {"sjonen", 2, 3}, {"sjoner", 2, 3},
    {"tioner", 2, 3}, {"tet", 1, 3},  {"teten", 2, 4}, {"ist", 1, 2},    {"isten", 2, 3},  {"isme", 2, 3},
    {"ism", 1, 2},    {"era", 2, 3},  {"erar", 2, 3},  {"erade", 3, 4},  {"ere", 2, 3},    {"erer", 2, 3},
    {"erede", 3, 4},  {"ell", 1, 2},  {"el", 9, 9},    {"ent", 1, 3},    {"ant", 1, 2},    {"ans", 1, 3},
    {"ens", 1, 3},    {"ik", 1, 2},   {"iv", 1, 2},    {"tek", 1, 2},    {"bet", 1, 3},    {"ur", 1, 2},
    {"on", 1, 3},     {"jon", 1, 2},  {"in", 1, 3},    {"al", 1, 3},     {"ment", 1, 2},   {"log", 1, 2},
    {"graf", 1, 3},   {"nom", 1, 3},  {"fon", 1, 2},   {"ör", 1, 2},     {"ør", 1, 2},     {"ös", 1, 2},
    {"øs", 1, 2},     {"eri", 1, 2},  {"ori", 1, 3},   {"ogi", 1, 3},    {"emi", 1, 2},    {"omi", 1, 3},
    {"ofi", 1, 3},    {"odi", 1, 3},  {"esi", 1, 2},   {"afi", 1, 3},    {"inne", 2, 3},   {"inde", 2, 3}};

struct Scandinavian {
    Word const& word;
    std::vector<Nucleus>& nuclei;
    Language language;
    std::string spelled;
    std::size_t stress = 0;

    char32_t at(std::size_t i) const { return i < word.size() ? word[i].base : U'\0'; }
    bool consonant(std::size_t i) const {
        return i < word.size() && is_letter(word[i].base) && !is_vowel_letter(word[i].base);
    }
    bool ends(std::string_view letters) const { return spelled.ends_with(letters); }
    bool begins(std::string_view letters) const { return spelled.starts_with(letters); }

    ScandinavianVowel const* row(std::size_t i) const {
        for (auto const& one : scandinavian_vowels(language))
            if (one.base == at(i) && one.mark == (i < word.size() ? word[i].mark : 0)) return &one;
        return nullptr;
    }

    // Native words are stressed on the first syllable, behind a weak prefix on the second; foreign endings
    // take the stress.
    void find_stress() {
        std::size_t const n = nuclei.size();
        for (std::size_t k = 0; k < n; ++k)
            if (word[nuclei[k].held.letter].mark == mark::acute) {
                stress = k;
                return;
            }
        for (auto const& ending : stressed_endings)
            if (n >= ending.vowels && ends(ending.letters)) {
                stress = n - ending.from_end;
                return;
            }
        bool const prefix = n > 1 && nuclei[1].held.letter > 2 &&
                            ((begins("be") && consonant(2)) || (begins("ge") && consonant(2) && n > 2) ||
                             begins("för") || (begins("for") && n > 2 && language != Language::swedish));
        stress = prefix ? 1 : 0;
        if (stress == 0) // the synthesiser knows some loans: "kanot"
            for (std::size_t k = 0; k < n; ++k)
                if (nuclei[k].stressed && nuclei[k].held.vowel.length == VowelLength::long_ &&
                    !(at(nuclei[k].held.letter) == U'e' && nuclei[k].held.letter + 1 == word.size()))
                    stress = k;
    }

    // Consonants behind the vowel, to the next vowel or the end.
    std::size_t behind(std::size_t i) const {
        std::size_t n = 0;
        while (consonant(i + 1 + n)) ++n;
        return n;
    }

    bool strong(std::size_t k) const { return k == stress || (k > stress && nuclei[k].secondary); }

    /// "kärlek", "frihet": the vowel of a suffix that was a word.
    bool full_suffix(std::size_t k) const {
        return k > 0 && k + 1 == nuclei.size() && (ends("lek") || ends("het") || ends("hed"));
    }

    // A strong vowel is long before one consonant at most; not before x, nor in a word of one syllable that
    // the synthesiser shortens ("vän", "kom").
    bool is_long(std::size_t k) const {
        bool const last_one = k + 1 == nuclei.size();
        if (full_suffix(k)) return true;
        if (at(nuclei[k].held.letter) == U'a' && word[nuclei[k].held.letter].mark == mark::ring && last_one &&
            behind(nuclei[k].held.letter) == 0)
            return true;
        if (!strong(k)) return false;
        std::size_t const i = nuclei[k].held.letter, n = behind(i);
        bool const said_long = nuclei[k].held.vowel.length == VowelLength::long_;
        if (n >= 2) return said_long && at(i + 1) != at(i + 2);
        if (at(i + 1) == U'x') return false;
        bool const last = i + 1 + n >= word.size();
        if (n == 0 || !last || said_long || nuclei.size() > 1) return true;
        // Swedish and Norwegian double a last consonant behind a short vowel, but for m and n.
        char32_t const c = at(i + 1);
        if (language == Language::danish) return c == U'r' || c == U'l' || c == U'v' || c == U'g';
        return c != U'm' && c != U'n' && c != U'j';
    }

    bool weak_e(std::size_t k) const {
        std::size_t const i = nuclei[k].held.letter;
        if (at(i) != U'e' || word[i].mark || strong(k) || k == 0 || full_suffix(k)) return false;
        return k > stress || language == Language::swedish;
    }

    std::string_view swedish_and_norwegian_o(std::size_t k, bool lengthened) const {
        auto const base = nuclei[k].held.vowel.base;
        bool const close = base == U'u' || base == U'ʊ';
        bool const last = k + 1 == nuclei.size();
        if (last && k != stress && (ends("or") || ends("ors") || ends("dom") || ends("o"))) return "ʊ";
        std::size_t const i = nuclei[k].held.letter;
        bool const ion = i >= 2 && at(i + 1) == U'n' && (at(i - 1) == U'j' || at(i - 1) == U'i') &&
                         (at(i - 2) == U's' || at(i - 2) == U't');
        if (ion) return "uː"; // "-tion", "-sjon", within compounds too
        if (lengthened) return close || last ? "uː" : "oː";
        return close && k != stress ? "ʊ" : "ɔ";
    }

    // Strong ä is lower before r, and e before r and another consonant; ö is open there: "stjärna", "berg",
    // "för".
    std::string_view swedish_before_r(std::size_t k, bool lengthened, std::string_view other) const {
        std::size_t const i = nuclei[k].held.letter;
        if (at(i + 1) != U'r' || !strong(k) || word[i].mark == mark::acute) return other;
        char32_t const c = at(i + 2);
        bool const soft = c == U'n' || c == U'd' || c == U'l'; // long before these too
        bool const double_dots = word[i].mark == mark::diaeresis;
        if (at(i) == U'a' && double_dots) return lengthened || soft ? "æː" : "æ";
        if (at(i) == U'o' && double_dots) return lengthened || soft ? "œː" : "œ";
        if (at(i) == U'e' && consonant(i + 2) && at(i + 2) != U'r') return "æ";
        return other;
    }

    // ɔ before g and v, o in the last syllable of foreign words.
    std::string_view danish_short_or_long(std::size_t i, bool lengthened) const {
        char32_t const next = at(i + 1);
        bool const nasal = next == U'n' || next == U'm';
        switch (at(i)) {
        case U'o':
            if (lengthened) return next == U'g' || next == U'v' ? "ɔː" : "oː";
            return "ɔ";
        case U'i':
            return !lengthened && next == U'n' && consonant(i + 2) ? "e" : "";
        case U'y':
            return !lengthened && consonant(i + 2) ? "ø" : "";
        case U'u':
            return !lengthened && nasal && consonant(i + 2) ? "o" : "";
        default:
            return "";
        }
    }

    // A vowel that was matched to a consonant beside its letter.
    void place_on_vowels() {
        for (auto& nucleus : nuclei) {
            auto& i = nucleus.held.letter;
            if (is_vowel_letter(at(i))) continue;
            if (i > 0 && is_vowel_letter(at(i - 1)))
                --i;
            else if (is_vowel_letter(at(i + 1)))
                ++i;
        }
    }

    // An e between consonants that speech swallows is sung: "morgen".
    void restore_e() {
        for (std::size_t i = 1; i < word.size(); ++i) {
            if (at(i) != U'e' || word[i].mark || is_vowel_letter(at(i - 1)) || is_vowel_letter(at(i + 1)))
                continue;
            auto const behind = std::find_if(nuclei.begin(), nuclei.end(),
                                             [&](Nucleus const& n) { return n.held.letter >= i; });
            bool const held = behind != nuclei.end() && behind->held.letter == i;
            if (!held) nuclei.insert(behind, Nucleus{{}, {vowel_of("ə"), i}, {}});
        }
    }

    // The synthesiser writes a long vowel before r twice, and says v and g after a vowel as u; both are sung.
    void mend_danish_speech() {
        for (std::size_t k = 0; k < nuclei.size();) {
            auto& after = nuclei[k].after;
            if (!after.empty() && after.front().vowel.base != U'i' && after.front().vowel.base != U'ɪ')
                after.clear();
            if (k > 0 && nuclei[k].meets && !written_apart(nuclei[k - 1].held.letter, nuclei[k].held.letter))
                nuclei.erase(nuclei.begin() + static_cast<std::ptrdiff_t>(k));
            else
                ++k;
        }
    }
    bool written_apart(std::size_t left, std::size_t right) const {
        return right > left && is_vowel_letter(at(left)) && is_vowel_letter(at(right));
    }

    void mend(std::size_t k) const {
        auto& nucleus = nuclei[k];
        std::size_t const i = nucleus.held.letter;
        nucleus.stressed = nuclei.size() > 1 && k == stress;
        auto const* vowel = row(i);
        auto& v = nucleus.held.vowel;
        bool const ej = language == Language::danish && at(i) == U'e' && at(i + 1) == U'j';
        if (ej || (!nucleus.after.empty() && v.base == U'ɑ' && language == Language::danish))
            v = vowel_of("a");
        if (!vowel || !nucleus.after.empty() || ej) return;
        if (weak_e(k)) {
            v = vowel_of(language == Language::swedish ? "ɛ" : "ə");
            return;
        }
        bool const lengthened = is_long(k);
        std::string_view special;
        if (language == Language::danish && !word[i].mark) special = danish_short_or_long(i, lengthened);
        if (language != Language::danish && at(i) == U'o' && !word[i].mark)
            special = swedish_and_norwegian_o(k, lengthened);
        bool const low = language == Language::norwegian && at(i + 1) == U'r' && at(i) == U'e' &&
                         k == stress && !ends("ere") && !ends("erer");
        if (low) special = lengthened ? "æː" : "æ";
        if (language == Language::swedish) special = swedish_before_r(k, lengthened, special);
        v = vowel_of(!special.empty() ? special : lengthened ? vowel->long_one : vowel->short_one);
    }
};

/// Little words that are said otherwise than they are written.
struct LittleWord {
    Language language;
    std::string_view letters, held, glide = {};
};
constexpr LittleWord little_words[] = {
    {Language::danish, "de", "iː"},         {Language::danish, "jeg", "a", "i"},
    {Language::danish, "er", "ɛ"},          {Language::danish, "der", "ɛ"},
    {Language::danish, "og", "ɔ"},          {Language::danish, "mig", "a", "i"},
    {Language::danish, "dig", "a", "i"},    {Language::danish, "sig", "a", "i"},
    {Language::danish, "nej", "a", "i"},    {Language::norwegian, "de", "iː"},
    {Language::norwegian, "jeg", "æ", "ɪ"}, {Language::norwegian, "er", "æː"},
    {Language::norwegian, "der", "æː"},     {Language::norwegian, "og", "ɔ"},
    {Language::norwegian, "som", "ɔ"},      {Language::norwegian, "meg", "æ", "ɪ"},
    {Language::norwegian, "deg", "æ", "ɪ"}, {Language::norwegian, "seg", "æ", "ɪ"},
    {Language::swedish, "och", "ɔ"},        {Language::swedish, "som", "ɔ"},
    {Language::swedish, "om", "ɔ"},         {Language::swedish, "min", "iː"},
    {Language::swedish, "din", "iː"},       {Language::swedish, "sin", "iː"},
    {Language::swedish, "är", "æː"},        {Language::swedish, "han", "a"},
    {Language::swedish, "den", "ɛ"}};

/// The only vowel of a little word, from the list.
bool mend_little_word(Nucleus& nucleus, Word const& word, Language language) {
    auto const spelled = lower(word);
    for (auto const& one : little_words) {
        if (one.language != language || one.letters != spelled) continue;
        auto const vowel =
            std::find_if(word.begin(), word.end(), [](Letter const& l) { return is_vowel_letter(l.base); });
        auto const letter = static_cast<std::size_t>(vowel - word.begin());
        nucleus = {{}, {vowel_of(one.held), letter}, {}};
        if (!one.glide.empty()) nucleus.after.push_back({glide_of(one.glide), letter + 1});
        return true;
    }
    return false;
}

} // namespace

Sounds scandinavian(Word const& word, Language language) {
    auto out = synthesised(word, language);
    if (out.nuclei.empty()) return out;
    if (out.nuclei.size() == 1 && mend_little_word(out.nuclei.front(), word, language)) return out;
    Scandinavian mender{word, out.nuclei, language, lower(word)};
    if (language == Language::danish) mender.mend_danish_speech();
    mender.place_on_vowels();
    mender.restore_e();
    mender.find_stress();
    for (std::size_t k = 0; k < out.nuclei.size(); ++k) mender.mend(k);
    return out;
}

} // namespace vowelway::diction
