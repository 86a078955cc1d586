// SPDX-License-Identifier: MIT
#include "vowelway/diction/word_list.hpp"

#include "diction/words/letters.hpp"
#include "diction/words/sounds.hpp"
#include "vowelway/core/error.hpp"

#include <yaml-cpp/yaml.h>

#include <algorithm>
#include <fstream>
#include <sstream>

namespace vowelway::diction {

namespace {

constexpr std::size_t most_words = 20'000, most_bytes = 1 << 20;

Place place(YAML::Mark const& mark) {
    Place out;
    if (mark.line >= 0) {
        out.line = mark.line + 1;
        out.column = mark.column + 1;
    }
    return out;
}

std::string key(std::string_view word) { return diction::lower(diction::without_punctuation(word)); }

void read_words(YAML::Node const& words, WordList& list) {
    if (!words.IsMap())
        throw InputError("`words` is not a list of word: IPA", "write one `word: IPA` on each line, indented",
                         place(words.Mark()));
    if (words.size() > most_words)
        throw InputError("more than 20,000 words", "keep one list per song", place(words.Mark()));
    for (auto const& entry : words) {
        if (!entry.first.IsScalar() || !entry.second.IsScalar())
            throw InputError("a word has no pronunciation", "write `word: IPA`", place(entry.first.Mark()));
        try {
            list.add(entry.first.Scalar(), entry.second.Scalar());
        } catch (InputError& error) {
            throw error.at(place(entry.second.Mark()));
        }
    }
}

} // namespace

void WordList::add(std::string_view word, std::string_view ipa) {
    auto const name = key(word);
    if (name.empty())
        throw InputError("\"" + std::string(word) + "\" is not a word",
                         "write the word as it is written in the song");
    auto const phones = diction::phones(ipa);
    if (std::none_of(phones.begin(), phones.end(),
                     [](auto const& phone) { return phone.vowel && !phone.vowel->glide; }))
        throw InputError("the pronunciation of \"" + std::string(word) + "\" has no vowel",
                         "write it in IPA: amore: amore");
    words_.insert_or_assign(name, std::string(ipa));
}

std::string const* WordList::find(std::string_view word) const {
    if (words_.empty()) return nullptr;
    auto const found = words_.find(key(word));
    return found == words_.end() ? nullptr : &found->second;
}

WordList read_word_list(std::string const& path) {
    WordList out;
    try {
        std::ifstream file(path, std::ios::binary);
        if (!file) throw InputError("the word list cannot be opened", "check the name");
        std::string text(most_bytes + 1, '\0');
        file.read(text.data(), static_cast<std::streamsize>(text.size()));
        if (file.bad()) throw InputError("the word list cannot be read", "give a text file");
        text.resize(static_cast<std::size_t>(file.gcount()));
        if (text.size() > most_bytes)
            throw InputError("the word list is longer than 1 MiB", "keep one list per song");
        auto const root = YAML::Load(text);
        if (!root.IsMap())
            throw InputError("this is not a word list", "begin with `vowelway: 1`, then `words:`",
                             place(root.Mark()));
        for (auto const& entry : root) {
            if (!entry.first.IsScalar())
                throw InputError("a key is not a word", "begin with `vowelway: 1`, then `words:`",
                                 place(entry.first.Mark()));
            auto const name = entry.first.Scalar();
            if (name == "vowelway") {
                if (!entry.second.IsScalar() || entry.second.Scalar() != "1")
                    throw InputError("this format version is not known", "write `vowelway: 1`",
                                     place(entry.second.Mark()));
            } else if (name == "words") {
                read_words(entry.second, out);
            } else {
                throw InputError("\"" + name + "\" is unknown in a word list",
                                 "only `vowelway` and `words` start at the left margin; indent the words",
                                 place(entry.first.Mark()));
            }
        }
    } catch (InputError& error) {
        Place here;
        here.file = path;
        throw error.at(here);
    } catch (YAML::Exception const& error) {
        auto here = place(error.mark);
        here.file = path;
        throw InputError("this is not valid YAML: " + error.msg,
                         "write `word: IPA` with a space after the colon", here);
    }
    return out;
}

} // namespace vowelway::diction
