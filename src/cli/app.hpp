// SPDX-License-Identifier: MIT
// The command line as a whole.
#pragma once

#include "cli/help/command_words.hpp"

namespace vowelway::cli {

/// Runs the command that the command line names; returns the exit code 0 or 2. Throws what the command
/// throws.
int run(int argc, char** argv);

/// Every command and option, for the manual.
CommandWords all_commands();

} // namespace vowelway::cli
