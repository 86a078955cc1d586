// SPDX-License-Identifier: MIT
// A few notes on a staff of their own, with a word under each.
#pragma once

#include "vowelway/chart/drawing.hpp"
#include "vowelway/core/notation.hpp"
#include "vowelway/core/pitch.hpp"

#include <string>
#include <vector>

namespace vowelway::chart {

struct NotesOnStaff {
    enum class Look {
        steps, ///< quarter notes, the last a half
        slide, ///< half notes with a line from each to the next
        halves ///< half notes
    };
    std::vector<SpelledPitch> sounding; ///< from left to right
    std::vector<std::string> words;     ///< under each; empty where the one before goes on
    Clef clef;
    Look look = Look::steps;
};

/// No wider than `width`. The ink's top is at y = 0.
Drawing notes_on_staff(NotesOnStaff const& notes, double width, TextMeasurer const& measurer);

} // namespace vowelway::chart
