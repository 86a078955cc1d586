// SPDX-License-Identifier: MIT
#include "vowelway/report/words_report.hpp"

#include "report/json_parts.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>

namespace vowelway::report {

namespace {

std::string joined(std::vector<Vowel> const& vowels) {
    std::string out;
    for (auto const& vowel : vowels) out += vowel.ipa();
    return out;
}

std::string sung(SungVowel const& vowel) {
    std::string out = joined(vowel.before);
    out += vowel.held.ipa() + joined(vowel.after);
    return out;
}

} // namespace

// One word on a line: readable, and cheap for thousands of them.
std::string words_json(std::vector<SungWord> const& words, std::string_view language) {
    std::string out = fmt::format("{{\"vowelway\": 1, \"language\": \"{}\", \"words\": [", language);
    for (auto const& word : words) {
        Json one{{"word", word.word}};
        for (auto const* key : {"nuclei", "syllables", "held", "before", "glide"}) one[key] = Json::array();
        std::string optional;
        for (auto const& syllable : word.syllables) {
            if (syllable.optional) {
                optional = syllable.ipa;
                if (one["syllables"].empty()) one["syllables"].push_back("");
                one["syllables"].back() = one["syllables"].back().get<std::string>() + syllable.text;
                continue;
            }
            one["nuclei"].push_back(syllable.ipa);
            one["syllables"].push_back(syllable.text);
            one["held"].push_back(syllable.vowel.held.ipa());
            one["before"].push_back(joined(syllable.vowel.before));
            one["glide"].push_back(joined(syllable.vowel.after));
        }
        if (!optional.empty()) one["optional"] = optional;
        one["guessed"] = word.guessed;
        if (word.guessed) one["doubt"] = word.doubt;
        out += (&word == &words.front() ? "\n  " : ",\n  ") +
               one.dump(-1, ' ', false, Json::error_handler_t::replace);
    }
    return out + "\n]}\n";
}

std::string words_text(std::vector<SungWord> const& words) {
    Table table({{worded("syllables")}, {worded("sung")}, {""}});
    for (auto const& word : words) {
        std::string syllables, vowels;
        for (auto const& s : word.syllables) {
            syllables += (syllables.empty() ? "" : "-") + s.text;
            vowels += (vowels.empty() ? "" : " ") + (s.optional ? "(" + sung(s.vowel) + ")" : sung(s.vowel));
        }
        if (word.syllables.empty()) syllables = word.word;
        table.row({syllables, vowels, word.guessed ? worded("guessed: {0}", word.doubt) : ""});
    }
    return table.str();
}

} // namespace vowelway::report
