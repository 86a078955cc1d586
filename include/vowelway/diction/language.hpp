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
    hawaiian
};

/// BCP 47 primary tag: "it".
std::string_view tag(Language language);
/// English name: "Italian".
std::string_view to_string(Language language);
bool has_diction_rules(Language language);

/// From a BCP 47 tag ("it", "de-AT") or an English name ("Italian"), without regard to case.
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
