// SPDX-License-Identifier: MIT
// German: the synthesiser's phones, with the vowels of the stage pronunciation. Sources: T. Siebs, Deutsche
// Aussprache (1969), and Duden, Das Aussprachewoerterbuch (2015), from memory: unstressed e of be-, ge- and
// of inflections is ə, final -er is ɐ, the e of er-, ver-, zer- is ɛ; i before a vowel is a glide in learned
// words; vowels of open syllables are tense, others lax. r after a vowel is sung as a consonant.
#include "diction/german/german.hpp"
#include "diction/german/mending.hpp"
#include "diction/german/old_spelling.hpp"
#include "diction/syllables/grouping.hpp"
#include "diction/synthesis/synthesiser.hpp"

#include <algorithm>
#include <iterator>
#include <optional>

namespace vowelway::diction {

namespace {

constexpr std::string_view falling_in_german[] = {"aɪ", "aʊ", "ɔø", "ɔʏ", "ɔɪ", "ʊɪ"};

// The synthesiser writes "??" for ur before a consonant: long in ur- and at the end, else short.
std::string repaired(std::string ipa, std::string const& spelled) {
    for (std::size_t at = 0; (at = ipa.find("??", at)) != std::string::npos;) {
        bool const is_long = spelled.starts_with("ur") || spelled.find("kurh") != std::string::npos ||
                             spelled.find("schnur") != std::string::npos || spelled.ends_with("ur") ||
                             spelled.find("spur") != std::string::npos ||
                             spelled.find("geburt") != std::string::npos ||
                             spelled.find("natur") != std::string::npos;
        std::string const vowel = is_long ? "uː" : "ʊ";
        ipa.replace(at, 2, vowel + "ɾ");
        at += vowel.size();
    }
    // and "gən" for gn: Gnade, ungnädig
    if (spelled.find("gn") != std::string::npos && spelled.find("gen") == std::string::npos)
        if (auto const at = ipa.find("ɡən"); at != std::string::npos)
            ipa.replace(at, std::string_view("ɡən").size(), "ɡn");
    return ipa;
}

Sounds simple(Word const& word);

/// Two things the synthesiser leaves: little words have no stress ("seinem"), and an a without stress, at the
/// end or before the stress, is written long ("Maria").
void settle_stress(std::vector<Nucleus>& nuclei, std::size_t letters) {
    auto const strong = [](Nucleus const& n) { return n.stressed; };
    if (nuclei.size() > 1 && std::none_of(nuclei.begin(), nuclei.end(), strong)) {
        auto const full = std::find_if(nuclei.begin(), nuclei.end(), [](Nucleus const& n) {
            return n.held.vowel.base != U'ə' && n.held.vowel.base != U'ɐ';
        });
        if (full != nuclei.end()) full->stressed = true;
    }
    bool before_stress = false;
    for (std::size_t k = nuclei.size(); k-- > 0;) {
        auto& nucleus = nuclei[k];
        bool const weak = !nucleus.stressed && !nucleus.secondary && nucleus.after.empty();
        bool const ends_word = k > 0 && nucleus.held.letter + 1 == letters;
        if (weak && nucleus.held.vowel.base == U'a' && (before_stress || ends_word))
            nucleus.held.vowel.length = VowelLength::normal;
        before_stress = before_stress || nucleus.stressed;
    }
}

/// "a 'iː ɛ" as vowels and whether they are stressed.
std::vector<std::pair<std::string_view, bool>> phones_of(std::string_view vowels) {
    std::vector<std::pair<std::string_view, bool>> out;
    while (!vowels.empty()) {
        auto const end = std::min(vowels.find(' '), vowels.size());
        auto one = vowels.substr(0, end);
        bool const stressed = one.starts_with('\'');
        if (stressed) one.remove_prefix(1);
        out.emplace_back(one, stressed);
        vowels.remove_prefix(std::min(end + 1, vowels.size()));
    }
    return out;
}

// Part by part, the first one carrying the main stress.
Sounds compound(Word const& word, std::size_t cut) {
    auto out = simple(Word(word.begin(), word.begin() + static_cast<std::ptrdiff_t>(cut)));
    auto second = simple(Word(word.begin() + static_cast<std::ptrdiff_t>(cut), word.end()));
    for (auto& nucleus : second.nuclei) {
        nucleus.held.letter += cut;
        for (auto& sound : nucleus.before) sound.letter += cut;
        for (auto& sound : nucleus.after) sound.letter += cut;
        nucleus.secondary = nucleus.secondary || nucleus.stressed;
        nucleus.stressed = false;
        out.nuclei.push_back(nucleus);
    }
    if (!second.said.empty()) second.said.front().boundary_before = true; // no n of "Wiesen-grund" becomes ŋ
    out.said.insert(out.said.end(), second.said.begin(), second.said.end());
    return out;
}

Sounds simple(Word const& word) {
    Sounds out;
    auto const spelled = german_letters(word);
    auto sounded = phones(
        repaired(Synthesiser::instance().ipa(modern_spelling(lower(word)), Language::german), spelled));
    for (auto& phone : sounded) {
        if (!phone.vowel) continue;
        auto& v = *phone.vowel;
        if (v.base == U'ɜ') v.base = U'ɐ';
        if (v.base == U'ø' && v.length != VowelLength::long_ && &phone != &sounded.front() &&
            (&phone)[-1].vowel && (&phone)[-1].vowel->base == U'ɔ')
            v.base = U'ʏ';
        if (v.base == U'ɑ') v.base = U'a';
        if (v.base == U'y' && v.length != VowelLength::long_) v.base = U'ʏ';
    }
    out.nuclei = gather(sounded, falling_in_german);
    place_on_letters(out.nuclei, word);
    drop_unwritten_glides(out.nuclei);
    mend_german(out.nuclei, spelled);
    settle_stress(out.nuclei, spelled.size());
    out.said = std::move(sounded);
    return out;
}

/// Words whose vowels and stress the synthesiser mistakes: every vowel letter's vowel, ' before the stressed
/// one.
struct GermanWord {
    std::string_view letters, vowels;
};
constexpr GermanWord german_words[] = {
    {"maria", "a 'iː a"},      {"mariA", "a 'iː ɛ"},       {"magdalena", "a a 'eː a"},
    {"warum", "a 'ʊ"},         {"mariens", "a 'iː ə"},     {"marien", "a 'iː ə"},
    {"susanna", "u 'a a"},     {"helena", "'eː ə a"},      {"hosianna", "o i 'a a"},
    {"hosanna", "o 'a a"},     {"halleluja", "a ə 'uː a"}, {"jerusalem", "e 'uː a ɛ"},
    {"emmanuel", "ɛ 'aː u ɛ"}, {"immanuel", "ɪ 'aː u ɛ"}};

/// The nuclei of a word of that list; nothing for the others.
std::optional<std::vector<Nucleus>> listed_word(std::string const& spelled) {
    auto const* const found = std::find_if(std::begin(german_words), std::end(german_words),
                                           [&](GermanWord const& one) { return one.letters == spelled; });
    if (found == std::end(german_words)) return std::nullopt;
    std::vector<Nucleus> out;
    std::size_t letter = 0;
    for (auto const& [vowel, stressed] : phones_of(found->vowels)) {
        letter = spelled.find_first_of("aeiouyAOU", letter);
        out.push_back({{}, {vowel_of(vowel), letter++}, {}, false, stressed});
    }
    return out;
}

} // namespace

Sounds german(Word const& word) {
    auto const spelled = german_letters(word);
    if (auto listed = listed_word(spelled)) {
        auto out = simple(word);
        out.nuclei = std::move(*listed);
        return out;
    }
    for (auto const whole :
         {"der", "er", "wer", "her", "dem", "den", "wem", "wen", "daher", "woher", "hieher", "hierher"})
        if (spelled == whole) {
            auto out = simple(word);
            if (!out.nuclei.empty()) out.nuclei.back().held.vowel = vowel_of("eː");
            return out;
        }
    bool const away = spelled == "hinweg";
    if (away || spelled == "art" || spelled == "arten") {
        auto out = simple(word);
        if (out.nuclei.size() != (spelled == "art" ? 1u : 2u)) return out;
        out.nuclei[away ? 1 : 0].held.vowel = vowel_of(away ? "ɛ" : "aː");
        for (std::size_t k = 0; k < out.nuclei.size(); ++k) out.nuclei[k].stressed = k == (away ? 1u : 0u);
        return out;
    }
    auto const cut = german_joint(spelled);
    return cut ? compound(word, cut) : simple(word);
}

} // namespace vowelway::diction
