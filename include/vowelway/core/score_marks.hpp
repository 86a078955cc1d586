// SPDX-License-Identifier: MIT
// What a plan writes into a score.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace vowelway {

/// What to write at one note; empty fields write nothing.
struct ScoreMark {
    std::size_t note = 0; ///< index in Passage::notes, as read_score gives them for the same options
    std::string ipa;      ///< on a line of its own under the text
    std::string words;    ///< above the note
};

struct ScoreMarks {
    std::vector<ScoreMark> notes;
    std::string heading; ///< short lines in a corner of the first page, parted by line breaks
};

} // namespace vowelway
