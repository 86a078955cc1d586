// SPDX-License-Identifier: MIT
// The music in the order of singing, each pass with its words. Private to the library.
#pragma once

#include "io/score/part_events.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <vector>

namespace vowelway::io {

/// With `ScoreOptions::verse` every_verse the bars of all parts are put into the order of singing, and those
/// of the part `own` get their verse. Otherwise they stay as printed; a remark says what is left out. Throws
/// InputError.
void follow_as_sung(XmlSource const& source, std::vector<Part>& parts, std::size_t own,
                    ScoreOptions const& options, Remarks& remarks);

} // namespace vowelway::io
