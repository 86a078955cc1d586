// SPDX-License-Identifier: MIT
// The signs that lead through a score: repeats, endings, jumps. Private to the library.
#pragma once

#include "io/score/part_events.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace vowelway::io {

/// What stands at one bar, in any part.
struct BarSigns {
    bool repeat_begins = false, repeat_ends = false, also_after_jump = false;
    int times = 0;                    ///< as the repeat says; 0: it does not
    std::vector<int> ending;          ///< of these passes an ending begins here
    bool ending_ends = false;         ///< at the end of the bar
    bool segno = false, coda = false; ///< to jump to
    bool da_capo = false, dal_segno = false, to_coda = false, fine = false; ///< at the end of the bar
};

/// One for each bar of the longest part. Signs that only stand as text ("D.C. al Fine") count too.
std::vector<BarSigns> signs_of(std::vector<Part> const& parts);

/// A bar in the order of singing.
struct SungBar {
    std::size_t printed = 0;
    int pass = 1;    ///< how often this bar has been reached
    int section = 1; ///< which pass through the repeated section, or through the whole, this is
};

/// The order of singing, by the usual rules (common practice, no source; MusicXML 4.0 for the signs): a
/// repeat without a number is sung twice, or as often as `verses` gives words for its bars; after a jump
/// repeats are left out and the last ending is taken. The whole comes again for every verse that has had no
/// turn. `verses[bar]`: the number of lines of words there; `whole`: verses that go through the whole piece.
/// Throws InputError (without a file) where that gives more than most_score_bars.
std::vector<SungBar> order_of(std::vector<BarSigns> const& signs, std::vector<int> const& verses, int whole);

/// The part's bars in that order.
void unfold(Part& part, std::vector<SungBar> const& order);

/// "12" on the first pass, "12 (2nd time)" later; "2nd time" for a bar without number.
std::string name_of_pass(std::string const& bar, int pass);

} // namespace vowelway::io
