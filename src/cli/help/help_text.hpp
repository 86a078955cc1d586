// SPDX-License-Identifier: MIT
// What --help prints, and what is said of a word that is no command.
#pragma once

#include "cli/help/command_words.hpp"

#include <cstddef>
#include <string>

namespace vowelway::cli {

/// Help on a command, at most `width` columns wide where words allow; `full_name` is what is typed to reach
/// it.
std::string help_text(CommandWords const& command, std::string const& full_name, std::size_t width);

/// What to say of `word`, which is none of the commands: the one that was probably meant, and those there
/// are.
std::string no_such_command(CommandWords const& program, std::string const& word);

} // namespace vowelway::cli
