// SPDX-License-Identifier: MIT
#include "vowelway/core/wording.hpp"
#include "vowelway/files/lock.hpp"
#include "vowelway/files/write.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/io/profile/write_profile.hpp"
#include "yaml/tree.hpp"

namespace vowelway::io {

bool begin_profile(std::filesystem::path const& path, Profile const& profile) {
    auto const text = profile_text(profile);
    // Never write what cannot be read, or reads as something else.
    auto const back = parse_profile(text, path.string());
    if (profile_text(back) != text)
        throw InputError(worded("the new profile would not read back correctly"),
                         worded("check its name, date and notes"), Place{path.string(), 0, 0, {}});
    return files::create(path, text);
}

void extend_profile(std::filesystem::path const& path, std::span<Measurement const> measurements,
                    std::span<ProbeShift const> shifts) {
    files::update(path, yaml::largest_file, [&](std::string text) {
        for (auto const& m : measurements) text = with_measurement(text, path.string(), m);
        for (auto const& shift : shifts) text = with_shift(text, path.string(), shift);
        return text;
    });
}

} // namespace vowelway::io
