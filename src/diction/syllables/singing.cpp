// SPDX-License-Identifier: MIT
#include "diction/syllables/singing.hpp"

#include "diction/syllables/grouping.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <map>
#include <utility>

namespace vowelway::diction {

namespace {

// Words joined by hyphens are read one by one; the letters keep their places.
Sounds by_parts(Word const& word, Language language) {
    Sounds out;
    std::size_t from = 0;
    while (from < word.size()) {
        std::size_t to = from;
        while (to < word.size() && (is_letter(word[to].base) || word[to].base == U'\'' ||
                                    (word[to].base >= U'0' && word[to].base <= U'9')))
            ++to;
        if (to > from) {
            auto part = sounds(Word(word.begin() + static_cast<std::ptrdiff_t>(from),
                                    word.begin() + static_cast<std::ptrdiff_t>(to)),
                               language);
            for (auto& nucleus : part.nuclei) {
                nucleus.held.letter += from;
                for (auto& sound : nucleus.before) sound.letter += from;
                for (auto& sound : nucleus.after) sound.letter += from;
                out.nuclei.push_back(nucleus);
            }
            out.said.insert(out.said.end(), part.said.begin(), part.said.end());
            if (out.doubt.empty()) out.doubt = part.doubt;
        }
        from = to + 1;
    }
    return out;
}

// "nie" in one syllable: a close vowel leads into the next, unless that is weak or as close.
bool leads(Vowel const& first, Vowel const& second) {
    bool const close = first.base == U'i' || first.base == U'u' || first.base == U'y';
    return close && first.length == VowelLength::normal && second.base != U'ə' &&
           chart_place(second).height > 0.5;
}

// Syllables of a word list: where their borders are written, vowels side by side share a note.
std::vector<Nucleus> listed(std::string_view ipa) {
    auto found = phones(ipa);
    bool const borders =
        std::any_of(found.begin(), found.end(), [](Phone const& phone) { return phone.boundary_before; });
    for (std::size_t i = 1; borders && i < found.size(); ++i)
        if (found[i].vowel && found[i - 1].vowel && !found[i].boundary_before)
            (leads(*found[i - 1].vowel, *found[i].vowel) ? found[i - 1] : found[i]).vowel->glide = true;
    return gather(found, {});
}

} // namespace

namespace {

Reading read_anew(std::string_view word, Language language, DictionOptions const& options) {
    Reading out;
    out.letters = letters(word);
    if (auto const* ipa = options.words.find(word)) {
        out.sounds.nuclei = listed(*ipa);
        out.sounds.said = phones(*ipa);
        place_on_letters(out.sounds.nuclei, out.letters);
        out.origin = VowelOrigin::override_;
        return out;
    }
    out.sounds = by_parts(out.letters, language);
    if (language == Language::german && word == "weg" && !out.sounds.nuclei.empty()) // not the noun "Weg"
        out.sounds.nuclei.front().held.vowel = vowel_of("ɛ");
    if (!has_diction_rules(language))
        out.origin = VowelOrigin::synthesiser;
    else if (!out.sounds.doubt.empty())
        out.origin = VowelOrigin::guessed;
    return out;
}

} // namespace

struct WordsRead::Kept {
    std::map<std::pair<Language, std::string>, Reading> words;
};
WordsRead::WordsRead() : kept_(std::make_unique<Kept>()) {}
WordsRead::~WordsRead() = default;

Reading read_word(std::string_view word, Language language, DictionOptions const& options) {
    if (!options.read) return read_anew(word, language, options);
    auto& words = options.read->kept().words;
    auto const found = words.find({language, std::string(word)});
    if (found != words.end()) return found->second;
    return words.emplace(std::pair(language, std::string(word)), read_anew(word, language, options))
        .first->second;
}

SungVowel sung(Nucleus const& nucleus, Language language, DictionOptions const& options, VowelOrigin origin) {
    SungVowel out;
    out.held = nucleus.held.vowel;
    for (auto const& sound : nucleus.before) out.before.push_back(sound.vowel);
    for (auto const& sound : nucleus.after) out.after.push_back(sound.vowel);
    out.origin = origin;
    if (origin == VowelOrigin::override_) return out; // the teacher's own vowels stay as they are
    auto& base = out.held.base;
    switch (main_language(language)) {
    case Language::latin: // open throughout
        if (base == U'e') base = U'ɛ';
        if (base == U'o') base = U'ɔ';
        break;
    case Language::french: // e muet takes the lips of œ
        if (base == U'ə') base = U'œ';
        break;
    case Language::english: // "go" is held on o
        if (base == U'ə' && !out.after.empty() && out.after.front().base == U'ʊ') base = U'o';
        if (base == U'e' && !out.after.empty() && out.after.front().base == U'ə') base = U'ɛ'; // "fair"
        if (options.r_colour && nucleus.before_r)
            (out.after.empty() ? out.held : out.after.back()).rhotic = true;
        break;
    default:
        break;
    }
    return out;
}

SungWord sing(std::string_view word, Language language, DictionOptions const& options) {
    auto const reading = read_word(word, language, options);
    auto const& nuclei = reading.sounds.nuclei;
    SungWord out;
    out.word = word;
    out.doubt = reading.sounds.doubt;
    if (nuclei.empty()) out.doubt = worded("no vowel was found");
    out.guessed = !out.doubt.empty();
    auto const starts = divide(nuclei, reading.letters, language);
    for (std::size_t k = 0; k < nuclei.size(); ++k) {
        std::size_t const from = k == 0 ? 0 : reading.letters[starts[k]].from;
        std::size_t const to = k + 1 < nuclei.size() ? reading.letters[starts[k + 1]].from : word.size();
        SungSyllable syllable;
        syllable.text = word.substr(from, to - from);
        syllable.vowel = sung(nuclei[k], language, options, reading.origin);
        syllable.ipa = nuclei[k].ipa();
        syllable.stressed = nuclei[k].stressed;
        syllable.optional = nuclei[k].optional;
        out.syllables.push_back(std::move(syllable));
    }
    return out;
}

} // namespace vowelway::diction
