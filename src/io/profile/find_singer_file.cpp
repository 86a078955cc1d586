// SPDX-License-Identifier: MIT
#include "vowelway/core/wording.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"

#include <filesystem>
#include <utility>

namespace vowelway::io {

Singer find_singer(std::string const& name_or_path, Remarks& remarks, AverageVowels vowels) {
    if (auto voice = named_voice(name_or_path, vowels)) return *std::move(voice);
    if (std::error_code unknown; !std::filesystem::exists(name_or_path, unknown)) {
        std::string names;
        for (auto const voice : all_voice_types)
            names += (names.empty() ? "" : ", ") + std::string(to_string(voice));
        throw InputError(worded("no singer \"{0}\": neither a file nor a built-in voice", name_or_path),
                         worded("name a profile file, or one of {0}", names));
    }
    auto singer = read_profile(name_or_path);
    auto const more = profile_remarks(singer);
    remarks.insert(remarks.end(), more.begin(), more.end());
    return singer;
}

} // namespace vowelway::io
