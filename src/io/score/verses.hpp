// SPDX-License-Identifier: MIT
// The words of one verse on the line. Private to the library.
#pragma once

#include "io/score/voice_line.hpp"

#include <string>
#include <vector>

namespace vowelway::io {

/// The line of words of a verse; `wish` 0 to choose. Throws InputError when there is no such verse.
std::string choose_verse(XmlSource const& source, std::vector<std::string> const& lines, bool phonetic_too,
                         int wish, Remarks& remarks);

/// A syllable set under a rest by mistake belongs to the note after it, if that note has none.
void move_off_rests(VoiceLine& line, Remarks& remarks);

/// In later verses: takes over a refrain printed under the first verse, and leaves out notes that only
/// other verses sing.
void fit_verse(VoiceLine& line, std::vector<std::string> const& text_lines, Remarks& remarks);

} // namespace vowelway::io
