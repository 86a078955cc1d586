// SPDX-License-Identifier: MIT
// What a good teacher would pencil into a singer's copy, and the notes worth watching: chosen once from a
// plan, read by every output. How much to choose is common practice, no source; the bounds stand beside the
// code. Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/plan.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace vowelway::plan {

/// One thing written over a note.
struct PencilMark {
    std::size_t note = 0;            ///< index in Plan::notes
    std::size_t last = 0;            ///< the last note it holds for; `note` itself when it holds for one
    std::optional<Vowel> vowel = {}; ///< the letter of the vowel to sing, where it is another than the text's
    std::string words =
        {};               ///< "jaw a little open, lips less round"; empty where the mark before still says it
    bool turns = false;   ///< the vowel turns over here: let it, do not open for it
    bool outside = false; ///< the words say that the note is outside the singer's range
    bool sure = true;     ///< false: the measurement leaves it open, try it
};

/// A note worth watching: something is to be done, and it is long or exposed.
struct Watched {
    std::size_t note = 0; ///< the first such place
    std::vector<std::size_t>
        also;          ///< the same note on the same vowel, with the same to do, later in the song
    std::string words; ///< what to do, in short
    double weight = 0; ///< > 0; long and exposed notes have more
};

struct Pencil {
    std::vector<PencilMark> marks;     ///< in the order sung
    std::vector<Watched> watch;        ///< weightiest first, at most `most_watched`; may be empty
    std::vector<std::string> cautions; ///< of these marks, beside the caution that every output carries
    std::vector<std::size_t> turns;    ///< notes where the vowel turns over, in the order sung
};
inline constexpr std::size_t most_watched = 8;

Pencil pencil_of(Plan const& plan);

/// Whether a vowel in its own shape turns over on a note (Decision::turns_here), and is not changed there.
bool turns_here(Plan const& plan, std::size_t note);

/// "jaw a little open, lips less round": the main gesture, and a second one where it counts as much as a
/// singer can feel. The amount is always said. Empty for no gesture.
std::string in_short(std::vector<acoustics::Gesture> const& gestures);

/// "3 places to work on; the vowel turns over in bars 12 and 31." For the head of a page.
std::string summary_of(Plan const& plan, Pencil const& pencil);

/// "bar 4", "bars 4, 9 and 12": the printed numbers of notes, each once.
std::string bars_of(Passage const& passage, std::vector<std::size_t> const& notes);

} // namespace vowelway::plan
