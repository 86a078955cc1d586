// SPDX-License-Identifier: MIT
#include "vowelway/diction/word_list.hpp"

#include "diction/words/letters.hpp"
#include "diction/words/sounds.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "yaml/tree.hpp"

#include <algorithm>
#include <utility>

namespace vowelway::diction {

namespace {

constexpr std::size_t most_words = 20'000;

std::string key(std::string_view word) { return diction::lower(diction::without_punctuation(word)); }

void read_words(yaml::Node const& words, WordList& list) {
    yaml::map(words, "`words`", worded("one `word: IPA` on each line, indented"));
    if (words.fields.size() > most_words)
        throw yaml::error_at(words, worded("more than 20,000 words"), worded("keep one list per song"));
    for (auto const& field : words.fields) {
        auto const &word = field.key, &ipa = field.value;
        if (ipa.kind != yaml::Node::Kind::scalar)
            throw yaml::error_at(word, worded("a word has no pronunciation"), worded("write `word: IPA`"));
        yaml::placed(ipa, [&] {
            list.add(word.text, ipa.text);
            return 0;
        });
    }
}

} // namespace

void WordList::add(std::string_view word, std::string_view ipa) {
    auto const name = key(word);
    if (name.empty())
        throw InputError(worded("\"{0}\" is not a word", word),
                         worded("write the word as it is written in the song"));
    auto const phones = diction::phones(ipa);
    if (std::none_of(phones.begin(), phones.end(),
                     [](auto const& phone) { return phone.vowel && !phone.vowel->glide; }))
        throw InputError(worded("the pronunciation of \"{0}\" has no vowel", word),
                         worded("write it in IPA: amore: amore"));
    words_.insert_or_assign(name, std::string(ipa));
}

std::string const* WordList::find(std::string_view word) const {
    if (words_.empty()) return nullptr;
    auto const found = words_.find(key(word));
    return found == words_.end() ? nullptr : &found->second;
}

WordList parse_word_list(std::string const& text, std::string const& name, WordList known) {
    WordList out = std::move(known);
    auto const root = yaml::parse(text, name);
    if (root.kind != yaml::Node::Kind::map)
        throw yaml::error_at(root, worded("this is not a word list"),
                             worded("begin with `vowelway: 1`, then `words:`"));
    for (auto const& [key, value] : root.fields) {
        if (key.text == "vowelway") {
            if (value.kind != yaml::Node::Kind::scalar || value.text != "1")
                throw yaml::error_at(value, worded("this format version is not known"),
                                     worded("write `vowelway: 1`"));
        } else if (key.text == "words") {
            read_words(value, out);
        } else {
            throw yaml::error_at(
                key, worded("\"{0}\" is unknown in a word list", key.text),
                worded("only `vowelway` and `words` start at the left margin; indent the words"));
        }
    }
    return out;
}

} // namespace vowelway::diction
