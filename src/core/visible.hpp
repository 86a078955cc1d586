// SPDX-License-Identifier: MIT
// Text from strangers made safe to look at. Private to the library.
#pragma once

#include <string>
#include <string_view>

namespace vowelway {

/// The text as UTF-8 in which everything that could act on a terminal, or show words in another order than
/// they stand, is written out: control characters (C0 but for tab and line feed, DEL, C1) and the controls of
/// direction (U+202A..202E, U+2066..2069) as "\u{202e}", separators of lines (U+2028, U+2029) likewise, bytes
/// that are not UTF-8 as "\xff". A carriage return before a line feed stays: it ends a line of CSV.
std::string visible(std::string_view text);

} // namespace vowelway
