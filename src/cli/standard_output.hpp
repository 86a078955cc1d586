// SPDX-License-Identifier: MIT
// Where text leaves for a terminal or a pipe. Standard output: exit code 0 means that all of it arrived.
#pragma once

#include <string_view>

namespace vowelway::cli {

/// To standard output, as it is: the caller has made it visible(), or it is JSON, which escapes for itself.
void print(std::string_view text);

/// To standard error, made visible(): words of a score or names of files must not act on the terminal.
void say(std::string_view text);

/// Hands over what is still held back. Throws InputError when anything printed was not taken.
void finish_standard_output();

} // namespace vowelway::cli
