// SPDX-License-Identifier: MIT
#include "vowelway/io/wording/read_wording.hpp"

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
    yaml::only_keys(yaml::map(root, "a wording", example), "language sentences");
    Wording out;
    auto const* language = root.find("language");
    auto const* sentences = root.find("sentences");
    if (!language || !sentences)
        throw yaml::error_at(root, "a wording needs its language and its sentences",
                             "begin with language: de, then sentences: and \"English\": \"Deutsch\" below");
    out.language = yaml::scalar(*language, "the language");
    yaml::map(*sentences, "the sentences", "\"bar {0}\": \"Takt {0}\"");
    for (auto const& [key, value] : sentences->fields) {
        auto const& sentence = yaml::scalar(value, "a sentence");
        if (!same_places(key.text, sentence))
            throw yaml::error_at(value, "the places {0}, {1} .. are not those of the English sentence",
                                 "use each place of \"" + key.text + "\", in any order");
        out.sentences.emplace(key.text, sentence);
    }
    return out;
}

} // namespace vowelway::io
