// SPDX-License-Identifier: MIT
#include "vowelway/diction/language.hpp"

#include "diction/language/signs.hpp"
#include "diction/words/letters.hpp"
#include "vowelway/core/passage.hpp"

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
    {Language::italian, "it", "Italian"},       {Language::latin, "la", "Latin"},
    {Language::german, "de", "German"},         {Language::french, "fr", "French"},
    {Language::english, "en", "English"},       {Language::spanish, "es", "Spanish"},
    {Language::portuguese, "pt", "Portuguese"}, {Language::catalan, "ca", "Catalan"},
    {Language::romanian, "ro", "Romanian"},     {Language::dutch, "nl", "Dutch"},
    {Language::swedish, "sv", "Swedish"},       {Language::danish, "da", "Danish"},
    {Language::norwegian, "no", "Norwegian"},   {Language::icelandic, "is", "Icelandic"},
    {Language::polish, "pl", "Polish"},         {Language::czech, "cs", "Czech"},
    {Language::slovak, "sk", "Slovak"},         {Language::croatian, "hr", "Croatian"},
    {Language::slovenian, "sl", "Slovenian"},   {Language::hungarian, "hu", "Hungarian"},
    {Language::finnish, "fi", "Finnish"},       {Language::estonian, "et", "Estonian"},
    {Language::latvian, "lv", "Latvian"},       {Language::lithuanian, "lt", "Lithuanian"},
    {Language::russian, "ru", "Russian"},       {Language::ukrainian, "uk", "Ukrainian"},
    {Language::bulgarian, "bg", "Bulgarian"},   {Language::greek, "el", "Greek"},
    {Language::turkish, "tr", "Turkish"},       {Language::welsh, "cy", "Welsh"},
    {Language::irish, "ga", "Irish"},           {Language::gaelic, "gd", "Scottish Gaelic"},
    {Language::basque, "eu", "Basque"},         {Language::hawaiian, "haw", "Hawaiian"},
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
    if (words.size() > shown) out += " and " + std::to_string(words.size() - shown) + " more";
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
        out.evidence = words.empty() ? "there are no words" : "no word points to another language";
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
    out.evidence = std::to_string(tally.count) + " of " + std::to_string(words.size()) +
                   " words speak for it: " + list(tally.words);
    if (!out.sure && next > 0.6 * tally.weight)
        out.evidence += "; " + std::string(to_string(ranked[1].first)) + " is nearly as likely";
    return out;
}

} // namespace

std::string_view tag(Language language) { return row(language).tag; }
std::string_view to_string(Language language) { return row(language).name; }
bool has_diction_rules(Language language) { return language <= Language::spanish; }

std::optional<Language> parse_language(std::string_view text) {
    auto const wanted = diction::lower(text);
    auto const primary = wanted.substr(0, wanted.find_first_of("-_"));
    for (auto const& r : rows)
        if (primary == r.tag || wanted == diction::lower(r.name)) return r.language;
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
