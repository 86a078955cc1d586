// SPDX-License-Identifier: MIT
// What every text from outside must be before it is parsed, wherever its bytes come from.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace vowelway {

/// "64 MiB", "300 bytes": a bound as messages name it. Whole kibi- and mebibytes, otherwise rounded down.
std::string size_in_words(std::uintmax_t bytes);

/// Throws InputError naming the bound when `size` bytes are more than it. `name` is a file or what else the
/// bytes are called.
void require_size(std::uintmax_t size, std::uintmax_t bound, std::string const& name);

/// Throws InputError with line and column (in characters, both from 1) of the first byte that is not UTF-8
/// (RFC 3629), or of the first control character other than tab and line break: such files are binary.
void require_text(std::string_view text, std::string const& name);

} // namespace vowelway
