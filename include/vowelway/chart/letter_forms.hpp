// SPDX-License-Identifier: MIT
// The letters of a text as paths.
// Threads: belongs to one thread at a time.
#pragma once

#include "vowelway/chart/canvas.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace vowelway::chart {

/// A text as its font draws it: which letter-forms, and where.
struct SetText {
    struct Letter {
        std::string face;    ///< the font's name without a size
        unsigned form = 0;   ///< the font's number of the letter-form
        double x = 0, y = 0; ///< from the left end of the baseline
    };
    std::vector<Letter> letters; ///< only those that leave ink
    double advance = 0;
};

/// Draws letters as paths, for canvases that have no fonts of their own.
class LetterForms {
  public:
    virtual ~LetterForms() = default;
    virtual SetText set(std::string_view utf8, TextStyle const& style) const = 0;
    /// The outline of a letter that set() gave, 1000 to the em, y downwards; empty for a blank.
    virtual Path outline(SetText::Letter const& letter) const = 0;
};

} // namespace vowelway::chart
