// SPDX-License-Identifier: MIT
#include "vowelway/io/wording/read_wording.hpp"
#include "vowelway/core/wording.hpp"

#include "io/built_in_texts.hpp"
#include "yaml/tree.hpp"

namespace vowelway::io {

std::optional<Wording> built_in_wording(std::string const& code) {
    if (code == "en") return Wording{"en", {}};
    for (auto const& [name, yaml] : built_in_wording_texts())
        if (name == code) return parse_wording(std::string(yaml), code);
    return std::nullopt;
}

std::vector<std::string> wording_codes() {
    std::vector<std::string> out{"en"};
    for (auto const& text : built_in_wording_texts()) out.emplace_back(text.name);
    return out;
}

Wording parse_wording(std::string const& text, std::string const& file) {
    auto const root = yaml::parse(text, file);
    constexpr auto example = "language: de";
    yaml::only_keys(yaml::map(root, worded("a wording"), example), "language sentences");
    Wording out;
    auto const* language = root.find("language");
    auto const* sentences = root.find("sentences");
    if (!language || !sentences)
        throw yaml::error_at(
            root, worded("a wording needs its language and its sentences"),
            worded("begin with language: de, then sentences: and \"English\": \"Deutsch\" below"));
    out.language = yaml::scalar(*language, worded("the language"));
    yaml::map(*sentences, worded("the sentences"), "\"bar {0}\": \"Takt {0}\"");
    for (auto const& [key, value] : sentences->fields) {
        auto const& sentence = yaml::scalar(value, worded("a sentence"));
        if (!same_places(key.text, sentence))
            throw yaml::error_at(
                value, worded("the places {0} are not those of the English sentence", "{0}, {1} .."),
                worded("use each place of \"{0}\", in any order", key.text));
        out.sentences.emplace(key.text, sentence);
    }
    return out;
}

} // namespace vowelway::io
