// SPDX-License-Identifier: MIT
#include "diction/syllables/grouping.hpp"
#include "diction/syllables/singing.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/diction/sing_words.hpp"

#include "core/utf8.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {
constexpr std::size_t longest_text = 1 << 20; // a libretto is an eighth of it
constexpr std::size_t longest_word = 120;     // letters; longer ones are not words
} // namespace

std::vector<SungWord> transcribe(std::string_view text, Language language, DictionOptions const& options) {
    if (text.size() > longest_text)
        throw InputError(worded("the text is longer than 1 MiB"), worded("split it into pieces"));
    if (!utf8::valid(text)) throw InputError(worded("the text is not UTF-8"), worded("save it as UTF-8"));
    std::vector<SungWord> out;
    while (!text.empty()) {
        auto const end = text.find_first_of(" \t\r\n\f\v");
        auto const word = diction::without_punctuation(text.substr(0, end));
        if (!word.empty()) {
            if (word.size() > 4 * longest_word)
                throw InputError(worded("a word of more than {0} letters", longest_word),
                                 worded("separate the words with spaces"));
            out.push_back(diction::sing(word, language, options));
        }
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
    return out;
}

} // namespace vowelway::diction
