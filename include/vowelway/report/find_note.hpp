// SPDX-License-Identifier: MIT
// One note of a passage as a person names it: by bar and beat.
// Threads: any number at once.
#pragma once

#include "vowelway/core/passage.hpp"

#include <cstddef>
#include <string>

namespace vowelway::report {

struct NoteAsked {
    std::string score;   ///< its file, for messages
    std::string measure; ///< the bar's printed number
    double beat = 0;     ///< 0: the first note of the bar
};

/// Index of the note with a vowel that begins there. Throws InputError that names the nearest ones.
std::size_t find_note(Passage const& passage, NoteAsked const& asked);

} // namespace vowelway::report
