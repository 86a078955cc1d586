// SPDX-License-Identifier: MIT
// Which of the marks in a score are ours, and of which line of which part. Private to the library.
#pragma once

#include "io/score/xml_source.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <pugixml.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::io {

/// A line that is marked. Ids of its marks are "vowelway-KEY-..", or "vowelway-.." where the key is empty.
struct LineKey {
    std::string part; ///< the part's id
    std::string key;  ///< the part's id, with ".2" for its second line; empty for the only line of a score
    bool main = true; ///< the line that is sung when the part alone is named: marks without a key are its own
    bool several = false; ///< one of several lines of its part
};
/// The line that these options read. Throws InputError where they fit none.
LineKey line_key(XmlSource const& source, ScoreOptions const& options);

/// "vowelway-P1-12".
std::string mark_id(LineKey const& line, std::string_view rest);

/// A line of the heading in a corner of the page, and for which lines of music it was written.
struct HeadingLine {
    std::string text;
    std::vector<std::string> keys;
};

/// The elements of ours to be taken away before `line` is marked anew, in the order of the text: its own
/// marks, and all credits. Without a line: all that are ours.
std::vector<pugi::xml_node> marks_to_replace(pugi::xml_node root, LineKey const* line);

/// What the headings said of other lines.
std::vector<HeadingLine> other_headings(pugi::xml_node root, LineKey const& line);

/// With the lines of a new heading: what both say stands once.
std::vector<HeadingLine> joined(std::vector<HeadingLine> others, std::string_view heading,
                                LineKey const& line);

} // namespace vowelway::io
