// SPDX-License-Identifier: MIT
// Several singers or several keys on one command line.
#pragma once

#include "vowelway/plan/keys.hpp"

#include <string>
#include <vector>

namespace vowelway::cli {

/// Of each name: a folder gives the YAML files in it that begin as profiles do, in the order of their names;
/// anything else stays. Throws InputError for a folder without profiles.
std::vector<std::string> profiles_named(std::vector<std::string> const& names);

/// Whether the file looks like a singer's profile: a YAML file with a `singer` key at its head.
bool looks_like_profile(std::string const& path);

/// "-6..6", "-6..+6", "3". Ends the program as bad_command_line does.
plan::KeyRange parse_keys(std::string const& option, std::string const& text);

} // namespace vowelway::cli
