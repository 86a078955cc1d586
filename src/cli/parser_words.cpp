// SPDX-License-Identifier: MIT
#include "cli/parser_words.hpp"

#include "vowelway/core/wording.hpp"

#include <optional>
#include <vector>

namespace vowelway::cli {

namespace {

/// As CLI11 has them; the first that fits is taken.
constexpr std::string_view sentences[] = {
    to_word("{0} is required"),
    to_word("The following argument was not expected: {0}"),
    to_word("The following arguments were not expected: {0}"),
    to_word("Could not convert: {0} = {1}"),
    to_word("{0}: Value {1} not in range {2} to {3}"),
    to_word("{0}: Value {1} could not be converted"),
    to_word("{0}: {1} not in {2}"),
    to_word("{0}: {1} required {2} missing"),
    to_word("{0}: At least {1} required but received {2}"),
    to_word("{0}: At Most {1} required but received {2}"),
    to_word("{0}: Should be true/false or a number"),
    to_word("{0}: too many inputs for a flag"),
    to_word("{0} was given a disallowed flag override"),
};

constexpr std::size_t place_size = 3; // {0}

/// What stands in the places of a sentence, in order; nothing where the text is another sentence.
std::optional<std::vector<std::string>> pieces_of(std::string_view sentence, std::string_view text) {
    std::vector<std::string> pieces;
    auto const first = sentence.find('{');
    if (!text.starts_with(sentence.substr(0, first))) return std::nullopt;
    if (first == std::string_view::npos)
        return text == sentence ? std::optional(std::move(pieces)) : std::nullopt;
    text.remove_prefix(first);
    sentence.remove_prefix(first);
    while (!sentence.empty()) {
        sentence.remove_prefix(place_size);
        auto const joint = sentence.substr(0, sentence.find('{'));
        auto const end = joint.empty()                     ? text.size()
                         : joint.size() == sentence.size() ? text.rfind(joint)
                                                           : text.find(joint);
        if (end == std::string_view::npos) return std::nullopt;
        pieces.emplace_back(text.substr(0, end));
        text.remove_prefix(end + joint.size());
        sentence.remove_prefix(joint.size());
    }
    return text.empty() ? std::optional(std::move(pieces)) : std::nullopt;
}

std::string filled(std::string_view sentence, std::vector<std::string> const& pieces) {
    std::string out;
    for (std::size_t i = 0; i < sentence.size(); ++i)
        if (sentence[i] == '{') {
            out += pieces[static_cast<std::size_t>(sentence[i + 1] - '0')];
            i += place_size - 1;
        } else {
            out += sentence[i];
        }
    return out;
}

} // namespace

std::string parser_words(std::string_view text) {
    // What a newcomer meets first is said with what to do.
    if (text == "A subcommand is required") return worded("a command is missing");
    if (text == "--singer is required")
        return worded("--singer is missing: name a profile (me.yaml) or a voice (tenor)");
    for (auto const sentence : sentences)
        if (auto const pieces = pieces_of(sentence, text)) return filled(reworded(sentence), *pieces);
    return std::string(text);
}

} // namespace vowelway::cli
