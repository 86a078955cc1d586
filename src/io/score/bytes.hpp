// SPDX-License-Identifier: MIT
// Whole files in memory, bounded. Private to the library.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>

namespace vowelway::io {

/// The bytes of a regular file of at most `bound` bytes. Throws InputError when there is no such file, it
/// cannot be read, is empty, or is larger.
std::string read_bytes(std::filesystem::path const& file, std::uintmax_t bound);

/// "64 MiB".
std::string mebibytes(std::uintmax_t bytes);

} // namespace vowelway::io
