// SPDX-License-Identifier: MIT
// Whole files in memory, bounded.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>

namespace vowelway::files {

/// Throws InputError unless `path` is a regular file, or a link to one, that may be read: missing, a folder,
/// a device or pipe, and forbidden are told apart. Never waits for a pipe.
void require_readable(std::filesystem::path const& path);

/// The bytes of a regular file of at most `bound` bytes. Throws InputError as require_readable does, and for
/// a larger file, one that memory does not hold, and a disk that fails. An empty file is no error here.
std::string read(std::filesystem::path const& path, std::uintmax_t bound);

/// The same, of a text: throws also at the first byte that is not UTF-8 and at control characters, with line
/// and column (require_text in core/input_text.hpp).
std::string read_text(std::filesystem::path const& path, std::uintmax_t bound);

/// Standard input to its end, at most `bound` bytes. Throws InputError when there is more.
std::string read_standard_input(std::uintmax_t bound);

} // namespace vowelway::files
