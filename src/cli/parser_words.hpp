// SPDX-License-Identifier: MIT
// What the library that reads the command line says of a bad one, in the language that is spoken.
#pragma once

#include <string>
#include <string_view>

namespace vowelway::cli {

/// The library's own English sentence in that language; any other text as it is.
std::string parser_words(std::string_view text);

} // namespace vowelway::cli
