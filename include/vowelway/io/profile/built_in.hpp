// SPDX-License-Identifier: MIT
// The average voices that come with the program, and the singer a user names.
#pragma once

#include "vowelway/core/error.hpp"
#include "vowelway/core/singer.hpp"
#include "vowelway/core/technique.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace vowelway::io {

/// An average voice, derived from published tables (profiles/README.md). `average` is true.
/// Throws InputError for VoiceType::other, which has no average.
Singer built_in_voice(VoiceType type, AverageVowels vowels = AverageVowels::spoken);

/// The average voice of a name: "tenor" as `vowels` says, "sung tenor" and "spoken tenor" whatever it says.
/// Nothing for another name.
std::optional<Singer> named_voice(std::string_view name, AverageVowels vowels = AverageVowels::spoken);

/// The average voice of a measured singer's type, which the vowels they lack are taken from; nothing for an
/// average singer, and where there is none of that type.
std::optional<Singer> average_beside(Singer const& singer, AverageVowels vowels = AverageVowels::spoken);

/// The average voice of that name, else the profile in the file of that name. What was assumed is added to
/// the remarks. Throws InputError that lists the names when it is neither.
Singer find_singer(std::string const& name_or_path, Remarks& remarks,
                   AverageVowels vowels = AverageVowels::spoken);

} // namespace vowelway::io
