// SPDX-License-Identifier: MIT
// The line as notes to sing. Private to the library.
#pragma once

#include "io/score/timeline.hpp"
#include "io/score/voice_line.hpp"
#include "vowelway/core/passage.hpp"

#include <optional>
#include <vector>

namespace vowelway::io {

/// Where a line event went: the note it begins or continues, and the head that was taken from a chord.
struct EventFate {
    std::optional<std::size_t> sung;
    std::size_t head = 0;
};

struct SungLine {
    std::vector<SungNote> notes;
    std::vector<pugi::xml_node> sources;       ///< parallel: the <note> each begins with
    std::vector<double> onsets, lengths;       ///< parallel: quarter notes, onsets from the beginning
    std::vector<int> passes;                   ///< parallel: of their bars
    std::vector<std::vector<EventFate>> fates; ///< per measure, per event of the line
};

/// Chooses notes of chords, merges ties, sets syllables. `shift` moves what sounds.
SungLine sing(XmlSource const& source, VoiceLine const& line, Timeline const& time,
              ScoreOptions const& options, Interval shift, Remarks& remarks);

/// Dynamics: marks and hairpins of the part on the notes.
void set_dynamics(SungLine& sung, Part const& part, VoiceLine const& line, Timeline const& time);

} // namespace vowelway::io
