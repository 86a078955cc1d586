// SPDX-License-Identifier: MIT
// The lines of words under a part: which there are, and what stands on each. Private to the library.
#pragma once

#include "io/score/lyrics.hpp"
#include "io/score/part_events.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::io {

struct LyricLines {
    std::vector<std::string> text, phonetic; ///< numbers of the lines
    std::string language;
};

/// Throws InputError where there are more than a score can have.
LyricLines lyric_lines(Part const& part);

/// The lyric of an event on one line, from any note of its chord; nothing if it has none.
std::optional<LyricText> lyric_on(PartEvent const& event, std::string const& line);
std::optional<std::string> phonetic_on(PartEvent const& event, std::string const& line);

} // namespace vowelway::io
