// SPDX-License-Identifier: MIT
// The same score with a plan written into it.
#pragma once

#include "vowelway/core/score_marks.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <filesystem>
#include <string>
#include <string_view>

namespace vowelway::io {

enum class ScoreForm { plain, compressed };

/// The score with the marks, from the bytes of a file to those of another; marks of an earlier run on
/// the same line are replaced, those of other parts and lines stay. All else keeps its bytes: only elements
/// of ours are put in, and a compressed score's other members stay as they are. (A score with letters beyond
/// ASCII in another encoding than UTF-8 is written in UTF-8, which it then declares.)
///
/// What is put in, valid against MusicXML 4.0: a <lyric name="vowelway"> with the number after the part's
/// last, <direction id="vowelway-..."> with <words> before the note, <credit id="vowelway-...">. The ids name
/// the part, and of a part with several lines the line; headings of several lines are put together.
///
/// `name` is the file's name as messages give it.
/// Throws InputError for what read_score refuses and for a source that is no MusicXML; std::out_of_range for
/// a note that is not there.
std::string marked_score(std::string bytes, std::string const& name, ScoreOptions const& options,
                         ScoreMarks const& marks, ScoreForm form);

/// The same from file to file. The form follows the destination's extension: .mxl compressed, .musicxml and
/// .xml plain. Throws InputError also when the destination cannot be written; then nothing is left behind.
void write_marked_score(std::filesystem::path const& source, ScoreOptions const& options,
                        ScoreMarks const& marks, std::filesystem::path const& destination);

/// The text of a score without any marks of ours; the same bytes where there are none.
std::string without_marks(std::string_view musicxml, std::string const& file);

} // namespace vowelway::io
