// SPDX-License-Identifier: MIT
// Which vowel is where in a recording, typed by a person.
#pragma once

#include "vowelway/core/units.hpp"
#include "vowelway/core/vowel.hpp"

#include <string>
#include <vector>

namespace vowelway::io {

struct Cue {
    TimeSpan span;
    Vowel vowel;
};

inline constexpr std::size_t most_cues = 500;
inline constexpr std::size_t largest_cues = std::size_t{1} << 20; ///< bytes

/// One cue a line: start, end, vowel, separated by blanks, tabs or commas. Times in seconds (3.25) or as a
/// player shows them (0:03.2). Empty lines and what follows a # are skipped. At most `most_cues`. Throws
/// InputError with the line for anything else, for an end before its start and for overlapping cues.
/// `file` is what messages call the text.
std::vector<Cue> parse_cues(std::string const& text, std::string const& file);
/// The same from a file.
std::vector<Cue> read_cues(std::string const& path);

} // namespace vowelway::io
