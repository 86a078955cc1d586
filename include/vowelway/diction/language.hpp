// SPDX-License-Identifier: MIT
// The languages that are sung, and how one is recognised from a text.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace vowelway {
struct Passage;
}

namespace vowelway::diction {

/// Those that has_diction_rules() names have rules of their own (docs/diction.md); the others are transcribed
/// by the speech synthesiser alone, and every word of theirs counts as a guess.
enum class Language {
    italian,
    latin,
    german,
    french,
    english,
    spanish,
    portuguese,
    catalan,
    romanian,
    dutch,
    swedish,
    danish,
    norwegian,
    icelandic,
    polish,
    czech,
    slovak,
    croatian,
    slovenian,
    hungarian,
    finnish,
    estonian,
    latvian,
    lithuanian,
    russian,
    ukrainian,
    bulgarian,
    greek,
    turkish,
    welsh,
    irish,
    gaelic,
    basque,
    hawaiian,
    american_english, ///< English of the American stage
    german_latin,     ///< Latin as it is sung in German-speaking countries
    hebrew,           ///< in Latin letters, as printed under notes
    church_slavonic   ///< in Latin letters, as printed under notes
};

inline constexpr Language last_language = Language::church_slavonic;

/// BCP 47 tag: "it", "en-US".
std::string_view tag(Language language);
/// English name: "Italian".
std::string_view to_string(Language language);
bool has_diction_rules(Language language);

/// English for its American variant; every other language is its own.
Language main_language(Language language);

/// How far the vowels of a language can be trusted (docs/diction.md says on which words that was measured).
struct Trust {
    int right = 0;         ///< of a hundred vowels of words that no rule was made for; 0: not measured
    bool measured = false; ///< against a word list
};
Trust trust(Language language);

/// What a reader must be told before the vowels of this language are used: that there are no rules, that they
/// are rough (fewer than 93 of a hundred vowels right), or that they were never measured. Nothing for the
/// others.
std::optional<std::string> caution(Language language);

/// From a BCP 47 tag ("it", "de-AT", "en-US" for the American stage, "la-DE" for Latin in German use) or an
/// English name ("Italian"), without regard to case.
std::optional<Language> parse_language(std::string_view text);

/// A recognised language and what spoke for it.
struct LanguageGuess {
    Language language = Language::italian;
    std::string evidence; ///< "the words che, non, mio and 4 more are Italian"
    double share = 0;     ///< of the words, those that speak for the language, 0..1
    bool sure = false;    ///< enough words, and clearly more than for the next language
};

/// By function words and letters. A text without any evidence is taken for Italian, the language of
/// vocalises, and `evidence` says so.
LanguageGuess guess_language(std::string_view text);
/// From the words under the notes; a language named in the passage is not questioned.
LanguageGuess guess_language(Passage const& passage);

} // namespace vowelway::diction
