// SPDX-License-Identifier: MIT
// The commands and options as help, manual pages and completions tell them: one reading of the parser's
// tables.
#pragma once

#include <string>
#include <vector>

namespace CLI {
class App;
} // namespace CLI

namespace vowelway::cli {

struct OptionWords {
    std::vector<std::string> names;   ///< "-o", "--output"; of a positional its name alone
    std::string value;                ///< "FILE", "table|csv|json"; empty for a flag
    std::vector<std::string> choices; ///< what the value may be, if it is one of a few
    std::string says;                 ///< what it is for, with its default and limits
    bool positional = false;
    bool required = false;
};
/// A command, or the program itself.
struct CommandWords {
    std::string name;                 ///< "plan"
    std::string says;                 ///< what it is for
    std::string footer;               ///< an example, a caution
    std::vector<OptionWords> options; ///< without hidden ones; positionals first
    std::vector<CommandWords> commands;
};
CommandWords words_of(CLI::App const& app);

} // namespace vowelway::cli
