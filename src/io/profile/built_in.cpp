// SPDX-License-Identifier: MIT
#include "vowelway/io/profile/built_in.hpp"

#include "io/built_in_texts.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/profile/read_profile.hpp"

#include <algorithm>
#include <utility>

namespace vowelway::io {

namespace {

/// The names of the average voices, where the table of a language finds them; a test holds them to the
/// profiles.
[[maybe_unused]] constexpr std::string_view names[] = {to_word("Average bass"),
                                                       to_word("Average baritone"),
                                                       to_word("Average tenor"),
                                                       to_word("Average countertenor"),
                                                       to_word("Average alto"),
                                                       to_word("Average mezzo"),
                                                       to_word("Average soprano"),
                                                       to_word("Average treble"),
                                                       to_word("Average bass as sung"),
                                                       to_word("Average baritone as sung"),
                                                       to_word("Average tenor as sung"),
                                                       to_word("Average countertenor as sung"),
                                                       to_word("Average alto as sung"),
                                                       to_word("Average mezzo as sung"),
                                                       to_word("Average soprano as sung"),
                                                       to_word("Average treble as sung")};

/// "sung tenor", "spoken tenor": which average is wanted, taken off the name.
AverageVowels wanted(std::string_view& name, AverageVowels otherwise) {
    for (auto const& [word, vowels] :
         {std::pair<std::string_view, AverageVowels>{"sung ", AverageVowels::sung},
          {"spoken ", AverageVowels::spoken}})
        if (name.starts_with(word)) {
            name.remove_prefix(word.size());
            return vowels;
        }
    return otherwise;
}

} // namespace

Singer built_in_voice(VoiceType type, AverageVowels vowels) {
    auto const name = std::string(to_string(type));
    auto const texts = vowels == AverageVowels::sung ? built_in_sung_voice_texts() : built_in_voice_texts();
    auto const found =
        std::find_if(texts.begin(), texts.end(), [&](auto const& text) { return text.name == name; });
    if (found == texts.end())
        throw InputError(worded("there is no average voice \"{0}\"", name),
                         worded("give a profile of the singer"));
    auto singer = parse_profile(std::string(found->yaml), "built-in profile " + name).singer;
    singer.name = reworded(singer.name);
    return singer;
}

std::optional<Singer> named_voice(std::string_view name, AverageVowels vowels) {
    vowels = wanted(name, vowels);
    auto const type = parse_voice_type(name);
    if (!type || *type == VoiceType::other) return std::nullopt;
    return built_in_voice(*type, vowels);
}

std::optional<Singer> average_beside(Singer const& singer, AverageVowels vowels) {
    if (singer.average || singer.voice == VoiceType::other) return std::nullopt;
    return built_in_voice(singer.voice, vowels);
}

} // namespace vowelway::io
