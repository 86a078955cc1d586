// SPDX-License-Identifier: MIT
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"

#include <filesystem>
#include <string_view>
#include <utility>

namespace vowelway::io {

namespace {

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

Singer find_singer(std::string const& name_or_path, Remarks& remarks, AverageVowels vowels) {
    std::string_view name = name_or_path;
    vowels = wanted(name, vowels);
    auto const type = parse_voice_type(name);
    if (type && *type != VoiceType::other) return built_in_voice(*type, vowels);
    if (std::error_code unknown; !std::filesystem::exists(name_or_path, unknown)) {
        std::string names;
        for (auto const voice : all_voice_types)
            names += (names.empty() ? "" : ", ") + std::string(to_string(voice));
        throw InputError("no singer \"" + name_or_path + "\": neither a file nor a built-in voice",
                         "name a profile file, or one of " + names);
    }
    auto singer = read_profile(name_or_path);
    auto const more = profile_remarks(singer);
    remarks.insert(remarks.end(), more.begin(), more.end());
    return singer;
}

} // namespace vowelway::io
