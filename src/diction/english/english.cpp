// SPDX-License-Identifier: MIT
// English: the British standard without r after vowels, which the neutral stage pronunciation starts from,
// and the American stage, which has æ in "dance", ɑ in "hot", and the weak vowels of American speech; its r
// is left out after vowels too, unless it is asked for. Sources: D. Adams, A Handbook of Diction for Singers
// (1999); J. C. Wells, Accents of English (1982); from memory.
#include "diction/english/stems.hpp"
#include "diction/syllables/grouping.hpp"
#include "diction/synthesis/synthesiser.hpp"

#include <algorithm>
#include <iterator>
#include <optional>

namespace vowelway::diction {

namespace {
constexpr std::string_view falling_in_english[] = {"aɪ", "aʊ", "eɪ", "ɔɪ", "əʊ", "oʊ",
                                                   "iə", "eə", "ɛə", "ʊə", "ɔə"};
// How the vowel of "near" is written.
constexpr std::string_view near_spellings[] = {"ear", "eer", "ere", "ier", "eir", "eri",
                                               "iro", "iri", "ero", "era", "eru", "eor"};

bool consonant(Word const& word, std::size_t i) {
    return i < word.size() && is_letter(word[i].base) && !is_vowel_letter(word[i].base);
}

// A weak first a: neutral before one consonant, a doubled one, or one and l, r, h: "again", "accept",
// "apply".
void mend_first_a(Nucleus& first, Word const& word) {
    std::size_t const i = first.held.letter;
    bool const weak =
        !first.stressed && !first.secondary && first.after.empty() &&
        (first.held.vowel.base == U'a' || first.held.vowel.base == U'æ' || first.held.vowel.base == U'ə');
    if (!weak || word[i].base != U'a' || !consonant(word, i + 1)) return;
    bool const closed = consonant(word, i + 2) && word[i + 1].base != word[i + 2].base &&
                        word[i + 2].base != U'h' && word[i + 2].base != U'r' && word[i + 2].base != U'l';
    if (!closed) first.held.vowel.base = U'ə';
}

void mend_broad_a(Nucleus& nucleus, std::string_view spelled) {
    auto& v = nucleus.held.vowel;
    std::size_t const i = nucleus.held.letter;
    if ((v.base != U'a' && v.base != U'æ') || !nucleus.after.empty()) return;
    for (auto const& stem : broad_a) {
        std::size_t const offset = stem.letters.find('a');
        std::size_t const first = stem.letters.size() > offset + 1 && stem.letters.starts_with("a") &&
                                          stem.letters.find('a', 1) != std::string_view::npos
                                      ? stem.letters.find('a', 1)
                                      : offset; // ad-vance
        for (std::size_t const at : {offset, first}) {
            if (i < at || !spelled.substr(i - at).starts_with(stem.letters)) continue;
            std::size_t const next = i - at + stem.letters.size();
            if (next < spelled.size() && stem.unless.find(spelled[next]) != std::string_view::npos) continue;
            if (at == offset && first != offset) continue; // the a of ad-
            v = vowel_of("ɑː");
            return;
        }
    }
}

// Weak e at the beginning is ɪ ("enchant", "exact"); i before -ly, -ness, -ful, -less too ("hastily").
void mend_weak_front(Nucleus& nucleus, std::size_t k, std::string_view spelled) {
    auto& v = nucleus.held.vowel;
    std::size_t const i = nucleus.held.letter;
    bool const weak = !nucleus.stressed && !nucleus.secondary && nucleus.after.empty();
    if (!weak) return;
    if (k == 0 && i == 0 && spelled.front() == 'e' && v.base == U'ɛ') v = vowel_of("ɪ");
    auto const rest = spelled.substr(i + 1);
    bool const ending = rest == "ly" || rest == "ness" || rest == "nesses" || rest == "ful" ||
                        rest == "fully" || rest == "less";
    if (v.base == U'i' && spelled[i] != 'e' && ending) v = vowel_of("ɪ");
}

// A written r after the vowel that no vowel follows: "heart", "ever", "fire".
bool r_belongs(Nucleus const& nucleus, std::size_t limit, Word const& word) {
    std::size_t i = (nucleus.after.empty() ? nucleus.held.letter : nucleus.after.back().letter) + 1;
    while (i < limit && is_vowel_letter(word[i].base)) ++i;
    if (i >= word.size() || word[i].base != U'r') return false;
    while (i < word.size() && word[i].base == U'r') ++i;
    bool const mute_e = i < word.size() && word[i].base == U'e' &&
                        (i + 1 == word.size() ||
                         (i + 2 == word.size() && (word[i + 1].base == U's' || word[i + 1].base == U'd')));
    return i >= word.size() || !is_vowel_letter(word[i].base) || mute_e;
}

// Poets' contractions: the apostrophe stands for an e, "heav'n", "flow'r"; the two vowels share a note.
std::optional<std::size_t> contracted(Word const& word) {
    for (std::size_t i = 2; i + 1 < word.size(); ++i) {
        char32_t const next = word[i + 1].base;
        bool const nr = next == U'n' || next == U'r';
        bool const closed = i + 2 == word.size() || !is_vowel_letter(word[i + 2].base);
        bool const negation = next == U'n' && i + 2 < word.size() && word[i + 2].base == U't';
        if (word[i].base == U'\'' && nr && closed && consonant(word, i - 1))
            return negation ? std::nullopt : std::optional(i);
    }
    return std::nullopt;
}

bool near(std::string_view spelled) {
    return std::any_of(std::begin(near_spellings), std::end(near_spellings),
                       [&](auto const s) { return spelled.find(s) != std::string_view::npos; });
}

// "A-ca-di-an", "ma-te-ri-al", "i-de-a": i before a vowel is a syllable of its own; stressed and with a
// written r it is the vowel of "near".
void part_i(std::vector<Phone>& sounded, std::string_view spelled) {
    bool const may_be_near = near(spelled);
    for (std::size_t i = 0; i < sounded.size(); ++i) {
        if (!sounded[i].vowel) continue;
        auto& v = *sounded[i].vowel;
        bool const vowel_next = i + 1 < sounded.size() && sounded[i + 1].vowel;
        if (v.base == U'ɐ') v.base = U'ə';
        bool const before_r = i + 2 < sounded.size() && sounded[i + 2].text == "ɹ";
        bool const weak_i = v.base == U'i' && v.length != VowelLength::long_ &&
                            (!may_be_near || (sounded[i].stress == 0 && !before_r));
        if ((v.base == U'ɪ' || weak_i) && vowel_next && !(i > 0 && sounded[i - 1].vowel)) {
            v.base = U'i';
            sounded[i + 1].boundary_before = true;
        }
    }
}

// The last vowel of "happy" is i.
void mend_happy(Nucleus& last, Word const& word) {
    if (last.held.vowel.base != U'ɪ') return;
    std::size_t const i = last.held.letter, n = word.size();
    bool const at_end =
        i + 1 == n ||
        (i + 2 == n && (word[i].base == U'e' || (word[i].base == U'i' && word[i + 1].base == U'e'))) ||
        (word[i].base == U'i' && i + 3 == n && word[i + 1].base == U'e' && word[i + 2].base == U's');
    if (at_end && word[i].base != U'e') last.held.vowel.base = U'i';
}

// The synthesiser writes a for the short vowel of "and".
void mend_short_a(Nucleus& nucleus) {
    auto& held = nucleus.held.vowel;
    if (held.base == U'a' && held.length != VowelLength::long_ && nucleus.after.empty()) held.base = U'æ';
}

// What the apostrophe stands for leans on the vowel before it.
void join_contracted(std::vector<Nucleus>& nuclei, std::size_t apostrophe) {
    for (std::size_t k = 1; k < nuclei.size(); ++k) {
        if (nuclei[k].held.letter != apostrophe) continue;
        auto weak = nuclei[k].held;
        weak.vowel.glide = true;
        nuclei[k - 1].after.push_back(weak);
        nuclei.erase(nuclei.begin() + static_cast<std::ptrdiff_t>(k));
    }
}

// The vowel of "won": the synthesiser has an older standard here. And the article.
void mend_words(std::vector<Nucleus>& nuclei, std::string_view spelled, bool american) {
    for (auto const one : {"one", "ones", "once", "none", "someone", "anyone", "everyone", "oneself", "dost"})
        if (spelled == one)
            for (auto& nucleus : nuclei)
                if (nucleus.held.vowel.base == U'ɒ') nucleus.held.vowel = vowel_of("ʌ");
    for (auto const ask : {"ask", "asks", "asked", "ask'd", "asking", "askest", "ask'st", "asketh"})
        if (spelled == ask && !nuclei.empty() && !american) nuclei.front().held.vowel = vowel_of("ɑː");
    if (spelled == "live" && !nuclei.empty()) { // in songs nearly always the verb
        nuclei.front().held.vowel = vowel_of("ɪ");
        nuclei.front().after.clear();
    }
    if (spelled == "a" && !nuclei.empty()) nuclei.front() = {{}, {vowel_of("ə"), 0}, {}};
}

// The synthesiser's American voice colours vowels with r and has a close o before it: "father", "more".
void without_r_colour(std::vector<Phone>& sounded) {
    for (std::size_t i = 0; i < sounded.size(); ++i) {
        if (!sounded[i].vowel) continue;
        auto& v = *sounded[i].vowel;
        v.rhotic = false;
        bool const before_r = i + 1 < sounded.size() && sounded[i + 1].text == "ɹ";
        if (v.base == U'o' && before_r) v.base = U'ɔ';
    }
}

// On the stage t and d are no taps, and an r that no vowel follows is left to the vowel's colour.
void say_stage_consonants(std::vector<Phone>& sounded, std::string_view spelled) {
    bool const t = spelled.find('t') != std::string_view::npos;
    std::vector<Phone> out;
    for (std::size_t i = 0; i < sounded.size(); ++i) {
        bool const vowel_next = i + 1 < sounded.size() && sounded[i + 1].vowel;
        if (sounded[i].text == "ɹ" && !vowel_next) continue;
        out.push_back(sounded[i]);
        if (out.back().text == "ɾ") out.back().text = t ? "t" : "d";
    }
    sounded = std::move(out);
}

void find_r(std::vector<Nucleus>& nuclei, Word const& word) {
    for (std::size_t k = 0; k < nuclei.size(); ++k)
        nuclei[k].before_r =
            r_belongs(nuclei[k], k + 1 < nuclei.size() ? nuclei[k + 1].held.letter : word.size(), word);
}

} // namespace

Sounds english(Word const& written, Language stage) {
    Sounds out;
    auto& nuclei = out.nuclei;
    auto word = written;
    auto const apostrophe = contracted(word);
    if (apostrophe) word[*apostrophe].base = U'e';
    auto const spelled = in_ascii(word);
    bool const american = stage == Language::american_english;
    auto sounded = phones(Synthesiser::instance().ipa(lower(word), stage));
    if (american) without_r_colour(sounded);
    part_i(sounded, spelled);
    nuclei = gather(sounded, falling_in_english);
    for (auto& nucleus : nuclei)
        if (nucleus.held.vowel.base == U'i' && !nucleus.after.empty()) nucleus.held.vowel.base = U'ɪ';
    place_on_letters(nuclei, word);
    for (auto& nucleus : nuclei) nucleus.before.clear(); // w and y before a vowel are consonants
    if (nuclei.size() > 1) {
        mend_first_a(nuclei.front(), word);
        mend_happy(nuclei.back(), word);
    }
    for (std::size_t k = 0; k < nuclei.size(); ++k) {
        if (!american) mend_broad_a(nuclei[k], spelled);
        mend_short_a(nuclei[k]);
        mend_weak_front(nuclei[k], k, spelled);
    }
    if (apostrophe) join_contracted(nuclei, *apostrophe);
    mend_words(nuclei, spelled, american);
    find_r(nuclei, word);
    if (american) say_stage_consonants(sounded, spelled);
    out.said = std::move(sounded);
    return out;
}

} // namespace vowelway::diction
