// SPDX-License-Identifier: MIT
// From a part with its voices and verses to the one line that is sung. Private to the library.
#pragma once

#include "io/score/lyrics.hpp"
#include "io/score/part_events.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::io {

/// An event of the line: one of a voice, cut where another voice takes over.
struct LineEvent {
    PartEvent const* event = nullptr;
    double onset = 0, length = 0;
    bool cut = false;               ///< shorter than the event
    std::optional<LyricText> lyric; ///< of the chosen verse, if it has letters or hums
    std::optional<std::string> ipa; ///< of the phonetic line
    bool other_verse = false;       ///< no syllable here, but one in another verse
    bool unsung = false;            ///< a note other verses sing; not this one
};

struct LineMeasure {
    PartMeasure const* measure = nullptr;
    std::string verse; ///< the line of words sung in this bar
    std::vector<LineEvent> events;
};

struct VoiceLine {
    std::string verse;    ///< the chosen lyric line: "1"; empty when the part has no words
    std::string language; ///< of the words, where the score says
    int staff = 1;
    std::vector<LineMeasure> measures;
};

/// Which part to sing; remarks when there was a choice. Throws InputError when the wish fits none.
/// `voice` receives the number after a dot in the wish ("Voice.2"), else 0.
PartInfo choose_part(XmlSource const& source, std::vector<PartInfo> const& parts, ScoreOptions const& options,
                     int& voice, Remarks& remarks);

/// Lines of their own that a part has: voices with words, and voices without that have at least half as many
/// notes as the one with most, or in a singer's part begin 16 with it. choose_line takes 1 to `count`, those
/// with words first, and `main` for 0.
struct LinesToSing {
    int count = 0, main = 1;
};
LinesToSing lines_to_sing(XmlSource const& source, Part const& part);

/// Verse and voice of a part; remarks when there was a choice. `voice` from 1, 0 to choose.
VoiceLine choose_line(XmlSource const& source, Part const& part, int voice, ScoreOptions const& options,
                      Remarks& remarks);

} // namespace vowelway::io
