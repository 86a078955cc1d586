// SPDX-License-Identifier: MIT
// Singer profiles from YAML; the format is told in docs/profile-format.md.
#pragma once

#include "vowelway/core/error.hpp"
#include "vowelway/core/profile.hpp"

#include <filesystem>
#include <string>

namespace vowelway::io {

/// Reads a profile. Strict: throws InputError with file, line, column and remedy for unknown keys,
/// values no voice has, a vowel twice, and files over 1 MiB, not UTF-8 or not YAML.
Singer read_profile(std::filesystem::path const& path);

/// The same with the measurement history and the singer's own probe shifts.
Profile read_whole_profile(std::filesystem::path const& path);

/// A profile from a text; `file` is the name that messages give.
Profile parse_profile(std::string const& text, std::string const& file);

/// What was assumed about the singer: the deviations the profile leaves out.
Remarks profile_remarks(Singer const& singer);

} // namespace vowelway::io
