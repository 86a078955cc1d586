// SPDX-License-Identifier: MIT
// What a line asks of a voice whatever its vowels: where it lies, how long and how often the folds move.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/passage.hpp"
#include "vowelway/core/singer.hpp"

#include <optional>

namespace vowelway::plan {

/// The compass of a line and its quartiles weighted by time: a quarter of the time sung lies at or below
/// `quartile1`, and so on. The tessitura is what lies between the first and the third (Titze 2008, Journal of
/// Singing 65, 59, names the method; the paper is known to us from later ones that use it).
struct Tessitura {
    Pitch low, quartile1, median, quartile3, high;
};

struct Load {
    Tessitura tessitura;
    Duration whole;  ///< from the first note to the end of the last
    Duration voiced; ///< time dose: how long notes sound (Titze, Švec & Popolo 2003)
    /// Cycle dose: how often the folds open and close, the sum of fo times length (the same). A distance
    /// dose needs the level and is not given.
    double cycles = 0;
    /// From the lowest note down to the low end of the comfortable range, and from the highest up to its high
    /// end; negative where the line goes beyond. Nothing where no range is known.
    std::optional<Cents> reserve_below, reserve_above;
    Duration below, above; ///< time sung outside the comfortable range; 0 where none is known
};

/// -1 below the range, +1 above it, 0 within; a pitch of the range itself is within, to a cent.
int side_of(PitchRange const& range, Tuning const& tuning, Pitch pitch);

/// Nothing for a passage without notes.
std::optional<Load> load_of(Passage const& passage, std::optional<PitchRange> const& comfortable);

} // namespace vowelway::plan
