// SPDX-License-Identifier: MIT
// Is a score as large as scores are? Private to the library.
#pragma once

#include "io/score/part_events.hpp"

namespace vowelway::io {

/// Throws InputError, naming the bound, for texts, attributes and words longer than read_score.hpp allows,
/// and for parts with too many bars or words. What passes takes time and memory in proportion to its size.
void require_score_bounds(XmlSource const& source, std::vector<PartInfo> const& parts);

/// Throws InputError when a line has more than most_sung_notes.
void require_sung_notes(std::size_t notes, std::string const& file);

} // namespace vowelway::io
