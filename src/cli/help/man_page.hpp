// SPDX-License-Identifier: MIT
// Manual pages and shell completions, made from the same tables as --help.
#pragma once

#include "cli/help/command_words.hpp"

#include <string>
#include <vector>

namespace vowelway::cli {

struct NamedText {
    std::string name; ///< of the file: "vowelway-plan.1", "vowelway.bash"
    std::string text;
};

/// man(7) pages of section 1: one for the program, one for each command.
std::vector<NamedText> man_pages(CommandWords const& program, std::string const& version);

/// Completion for bash ("vowelway.bash"), zsh ("_vowelway") and fish ("vowelway.fish"): commands, options,
/// the words that an option takes, and else file names.
std::vector<NamedText> completions(CommandWords const& program);

} // namespace vowelway::cli
