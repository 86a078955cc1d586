// SPDX-License-Identifier: MIT
// What is sung on a text, in one line, for the tests of the languages.
#pragma once

#include "vowelway/diction/sing_words.hpp"

#include <string>
#include <string_view>

namespace vowelway::diction::test {

/// Nuclei of every word in dictionary notation, words separated by " | ".
inline std::string nuclei(std::string_view text, Language language) {
    std::string out;
    for (auto const& word : transcribe(text, language)) {
        if (!out.empty()) out += " | ";
        for (auto const& s : word.syllables) {
            if (&s != &word.syllables.front()) out += ' ';
            out += s.optional ? "(" + s.ipa + ")" : s.ipa;
        }
    }
    return out;
}

inline std::string syllables(std::string_view text, Language language) {
    std::string out;
    for (auto const& word : transcribe(text, language)) {
        if (!out.empty()) out += ' ';
        for (auto const& s : word.syllables) out += (&s == &word.syllables.front() ? "" : "-") + s.text;
    }
    return out;
}

inline std::string held(std::string_view text, Language language, DictionOptions const& options = {}) {
    std::string out;
    for (auto const& word : transcribe(text, language, options))
        for (auto const& s : word.syllables) out += (out.empty() ? "" : " ") + s.vowel.held.quality().ipa();
    return out;
}

} // namespace vowelway::diction::test
