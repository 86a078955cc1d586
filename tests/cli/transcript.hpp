// SPDX-License-Identifier: MIT
// Transcripts: commands with the output, errors and exit code they must give.
//   # a comment
//   $ a command line for sh
//   expected output          a line "..." stands for any number of lines
//   ! expected error line
//   -> 3                     exit code, when it is not 0
// A backslash in front keeps an expected line that begins with one of these signs.
#pragma once

#include <string>
#include <vector>

namespace vowelway::test {

struct Step {
    int line = 0;
    std::string command;
    std::vector<std::string> output, errors;
    int exit_code = 0;
};

/// Throws std::runtime_error on a text without a command or with lines before the first one.
std::vector<Step> parse_transcript(std::string const& text);

/// Whether the lines are as expected; "..." in `expected` matches any number of lines.
bool lines_match(std::vector<std::string> const& expected, std::vector<std::string> const& got);

std::vector<std::string> split_lines(std::string const& text);

} // namespace vowelway::test
