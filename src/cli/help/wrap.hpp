// SPDX-License-Identifier: MIT
// Words set to a width.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace vowelway::cli {

/// The lines of `text` of at most `width` characters each (not bytes: UTF-8), broken at blanks; line ends in
/// the text are kept. A word that is wider has a line of its own.
std::vector<std::string> wrapped(std::string_view text, std::size_t width);

/// `text` with every line that is wider than `width` broken at blanks, what follows set in: by four, or under
/// the last column of a table's row. The other lines stay as they are.
std::string fitted(std::string_view text, std::size_t width);

/// Columns of the terminal behind `descriptor`; 100 where it is none or does not say. Never under 40.
std::size_t columns_of(int descriptor);

} // namespace vowelway::cli
