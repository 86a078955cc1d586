// SPDX-License-Identifier: MIT
// A profile from questions and answers in the terminal.
#pragma once

#include "vowelway/core/singer.hpp"

#include <istream>
#include <string>

namespace vowelway::cli {

/// Asks on standard error, reads each answer as a line of `in` and checks it at once; an empty one takes what
/// stands in brackets. Gives the profile as YAML, which reads as the template of `profile new` does with the
/// same values. Throws InputError where the answers end too early.
std::string asked_profile(std::istream& in, std::string const& name, VoiceType voice);

/// Between double quotes of YAML.
std::string quoted(std::string const& text);

} // namespace vowelway::cli
