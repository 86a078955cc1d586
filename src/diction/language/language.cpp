// SPDX-License-Identifier: MIT
#include "vowelway/diction/language.hpp"

#include "diction/language/signs.hpp"
#include "diction/words/letters.hpp"
#include "vowelway/core/passage.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace vowelway::diction {

namespace {

struct Row {
    Language language;
    std::string_view tag, name;
};

constexpr Row rows[] = {
    {Language::italian, "it", to_word("Italian")},
    {Language::latin, "la", to_word("Latin")},
    {Language::german, "de", to_word("German")},
    {Language::french, "fr", to_word("French")},
    {Language::english, "en", to_word("English")},
    {Language::spanish, "es", to_word("Spanish")},
    {Language::portuguese, "pt", to_word("Portuguese")},
    {Language::catalan, "ca", to_word("Catalan")},
    {Language::romanian, "ro", to_word("Romanian")},
    {Language::dutch, "nl", to_word("Dutch")},
    {Language::swedish, "sv", to_word("Swedish")},
    {Language::danish, "da", to_word("Danish")},
    {Language::norwegian, "no", to_word("Norwegian")},
    {Language::icelandic, "is", to_word("Icelandic")},
    {Language::polish, "pl", to_word("Polish")},
    {Language::czech, "cs", to_word("Czech")},
    {Language::slovak, "sk", to_word("Slovak")},
    {Language::croatian, "hr", to_word("Croatian")},
    {Language::slovenian, "sl", to_word("Slovenian")},
    {Language::hungarian, "hu", to_word("Hungarian")},
    {Language::finnish, "fi", to_word("Finnish")},
    {Language::estonian, "et", to_word("Estonian")},
    {Language::latvian, "lv", to_word("Latvian")},
    {Language::lithuanian, "lt", to_word("Lithuanian")},
    {Language::russian, "ru", to_word("Russian")},
    {Language::ukrainian, "uk", to_word("Ukrainian")},
    {Language::bulgarian, "bg", to_word("Bulgarian")},
    {Language::greek, "el", to_word("Greek")},
    {Language::turkish, "tr", to_word("Turkish")},
    {Language::welsh, "cy", to_word("Welsh")},
    {Language::irish, "ga", to_word("Irish")},
    {Language::gaelic, "gd", to_word("Scottish Gaelic")},
    {Language::basque, "eu", to_word("Basque")},
    {Language::hawaiian, "haw", to_word("Hawaiian")},
    {Language::american_english, "en-US", to_word("American English")},
    {Language::german_latin, "la-DE", to_word("Latin in German use")},
    {Language::hebrew, "he", to_word("Hebrew")},
    {Language::church_slavonic, "cu", to_word("Church Slavonic")},
};

Row const& row(Language language) {
    return *std::find_if(std::begin(rows), std::end(rows),
                         [&](Row const& r) { return r.language == language; });
}

struct Tally {
    double weight = 0;
    std::vector<std::string> words; // different ones, in order
    std::size_t count = 0;
};

std::string list(std::vector<std::string> const& words) {
    std::string out;
    std::size_t const shown = std::min<std::size_t>(words.size(), 4);
    for (std::size_t i = 0; i < shown; ++i) out += (i ? ", " : "") + words[i];
    if (words.size() > shown) return worded("{0} and {1} more", out, words.size() - shown);
    return out;
}

LanguageGuess guess(std::vector<std::string> const& words) {
    std::map<Language, Tally> tallies;
    for (auto const& word : words) {
        for (auto const& [language, weight] : diction::signs(word)) {
            auto& tally = tallies[language];
            tally.weight += weight;
            ++tally.count;
            if (std::find(tally.words.begin(), tally.words.end(), word) == tally.words.end())
                tally.words.push_back(word);
        }
    }
    LanguageGuess out;
    if (tallies.empty()) {
        out.evidence =
            words.empty() ? worded("there are no words") : worded("no word points to another language");
        return out;
    }
    std::vector<std::pair<Language, Tally>> ranked(tallies.begin(), tallies.end());
    std::stable_sort(ranked.begin(), ranked.end(),
                     [](auto const& a, auto const& b) { return a.second.weight > b.second.weight; });
    auto const& [language, tally] = ranked.front();
    double const next = ranked.size() > 1 ? ranked[1].second.weight : 0;
    out.language = language;
    out.share = static_cast<double>(tally.count) / static_cast<double>(words.size());
    out.sure = tally.weight >= 3 && tally.weight > 1.3 * next;
    out.evidence = worded("{0} of {1} words speak for it: {2}", tally.count, words.size(), list(tally.words));
    if (!out.sure && next > 0.6 * tally.weight)
        out.evidence += "; " + worded("{0} is nearly as likely", reworded(to_string(ranked[1].first)));
    return out;
}

} // namespace

std::string_view tag(Language language) { return row(language).tag; }
std::string_view to_string(Language language) { return row(language).name; }
bool has_diction_rules(Language language) {
    using enum Language;
    switch (language) {
    case italian:
    case latin:
    case german:
    case french:
    case english:
    case spanish:
    case finnish:
    case hungarian:
    case czech:
    case polish:
    case russian:
    case portuguese:
    case swedish:
    case norwegian:
    case danish:
    case welsh:
    case american_english:
    case german_latin:
    case hebrew:
    case church_slavonic:
        return true;
    default:
        return false;
    }
}

Language main_language(Language language) {
    return language == Language::american_english ? Language::english : language;
}

Trust trust(Language language) {
    using enum Language;
    switch (language) { // docs/diction.md, "Figures"
    case italian:
        return {99, true};
    case latin:
        return {99, true};
    case german:
        return {94, true};
    case french:
        return {98, true};
    case english:
        return {97, true};
    case spanish:
        return {99, true};
    case american_english:
        return {79, true};
    case finnish:
        return {97, true};
    case hungarian:
        return {99, true};
    case czech:
        return {99, true};
    case polish:
        return {98, true};
    case russian:
        return {90, true};
    case portuguese:
        return {96, true};
    case swedish:
        return {95, true};
    case norwegian:
        return {93, true};
    case danish:
        return {89, true};
    case welsh:
        return {98, true};
    default:
        return {};
    }
}

std::optional<std::string> caution(Language language) {
    auto const name = reworded(to_string(language));
    if (!has_diction_rules(language))
        return worded("there are no diction rules for {0} yet: every vowel comes from the speech synthesiser",
                      name);
    auto const [right, measured] = trust(language);
    if (measured && right < 93)
        return worded("the rules for {0} are rough: of a hundred vowels of a word list {1} were right; read "
                      "the vowels over",
                      name, right);
    if (!measured)
        return worded("the rules for {0} were never compared with a dictionary: read the vowels over", name);
    return std::nullopt;
}

std::optional<Language> parse_language(std::string_view text) {
    auto const wanted = diction::lower(text);
    auto const primary = wanted.substr(0, wanted.find_first_of("-_"));
    auto whole = std::string(wanted);
    std::replace(whole.begin(), whole.end(), '_', '-');
    for (auto const& r : rows)
        if (whole == diction::lower(r.tag) || wanted == diction::lower(r.name)) return r.language;
    if (wanted == "la-at" || wanted == "la-ch") return Language::german_latin;
    for (auto const& r : rows)
        if (primary == r.tag) return r.language;
    if (primary == "nb" || primary == "nn") return Language::norwegian;
    if (primary == "ita") return Language::italian;
    if (primary == "lat") return Language::latin;
    if (primary == "deu" || primary == "ger") return Language::german;
    if (primary == "fra" || primary == "fre") return Language::french;
    if (primary == "eng") return Language::english;
    if (primary == "spa") return Language::spanish;
    return std::nullopt;
}

LanguageGuess guess_language(std::string_view text) {
    std::vector<std::string> words;
    while (!text.empty()) {
        auto const end = text.find_first_of(" \t\r\n");
        if (auto const word = diction::without_punctuation(text.substr(0, end)); !word.empty())
            words.push_back(diction::lower(word));
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
    return guess(words);
}

LanguageGuess guess_language(Passage const& passage) {
    if (auto const named = parse_language(passage.language); named && !passage.language.empty())
        return {*named, "the passage names its language", 1, true};
    std::string text;
    bool open = false; // within a word
    for (auto const& note : passage.notes)
        for (auto const& syllable : note.syllables) {
            using Part = Syllable::Part;
            if (!open || syllable.part == Part::begin) text += ' ';
            text += syllable.text;
            open = syllable.part == Part::begin || syllable.part == Part::middle;
        }
    return guess_language(text);
}

} // namespace vowelway::diction
