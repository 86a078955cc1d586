// SPDX-License-Identifier: MIT
// The commands of the program: one file each. A new command adds a line here and one in main.cpp.
#pragma once

namespace CLI {
class App;
}

namespace vowelway::cli {

// Each adds its subcommand to `app`, with help and an example, and the callback that runs it. A callback
// throws InputError for bad input (exit code 3) and CLI::Error for a bad command line (exit code 2).

void add_check(CLI::App& app);
void add_compare(CLI::App& app);
void add_explain(CLI::App& app);
void add_measure(CLI::App& app);
void add_plan(CLI::App& app);
void add_profile(CLI::App& app);
void add_tract(CLI::App& app);
void add_words(CLI::App& app);

} // namespace vowelway::cli
