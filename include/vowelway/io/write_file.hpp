// SPDX-License-Identifier: MIT
// Files appear whole or not at all.
#pragma once

#include <filesystem>
#include <string_view>

namespace vowelway::io {

/// Writes the bytes to a temporary file beside `destination` and renames it into place. What stood there
/// before stays untouched if anything fails; then InputError says what the system said.
void write_file(std::filesystem::path const& destination, std::string_view bytes);

} // namespace vowelway::io
