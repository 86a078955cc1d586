// SPDX-License-Identifier: MIT
// Standard output: exit code 0 means that all of it arrived.
#pragma once

#include <string_view>

namespace vowelway::cli {

void print(std::string_view text);

/// Hands over what is still held back. Throws InputError when anything printed was not taken.
void finish_standard_output();

} // namespace vowelway::cli
