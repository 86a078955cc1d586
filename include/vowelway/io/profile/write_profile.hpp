// SPDX-License-Identifier: MIT
// Profiles are begun once and then only grow: no measurement is ever lost.
#pragma once

#include "vowelway/core/profile.hpp"

#include <filesystem>
#include <span>
#include <string>

namespace vowelway::io {

/// The profile as YAML. Deviations that were assumed are left out, so that they are assumed again.
std::string profile_text(Profile const& profile);

/// Begins a profile. False, and nothing is touched, when the file is there already. Throws InputError for
/// what could not be read again and when the file cannot be written.
[[nodiscard]] bool begin_profile(std::filesystem::path const& path, Profile const& profile);

/// Adds measurements to an existing profile: each goes to the end of the history and becomes the vowel's
/// current value. A current value that the history does not know yet (typed by hand) is put into it first,
/// with the date and method of `source`. Each shift replaces the former one of its kind of probe (comments
/// within it go). The file is edited in place: comments, order and spelling stay, except a comment on the
/// line of a value that goes away (an fR3 that was not measured again).
///
/// The file is locked, read, extended and written as one step, so that of two programs that extend it at once
/// neither loses anything. Throws InputError for an average voice and for a file that cannot be extended like
/// that; then the file is untouched.
void extend_profile(std::filesystem::path const& path, std::span<Measurement const> measurements,
                    std::span<ProbeShift const> shifts = {});

/// What extend_profile does, on the text; `file` is the name that messages give.
std::string with_measurement(std::string const& text, std::string const& file,
                             Measurement const& measurement);
std::string with_shift(std::string const& text, std::string const& file, ProbeShift const& shift);

} // namespace vowelway::io
