// SPDX-License-Identifier: MIT
// All that is sung in a score: its parts, and the lines of their own within a part.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/passage.hpp"
#include "vowelway/core/singer.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <string>
#include <vector>

namespace vowelway::io {

/// One line that is sung: a part, or one of several on its staves.
struct ScorePart {
    std::string wish;    ///< for ScoreOptions::part: "1", or "1.2" for the second line of a part
    bool lowest = false; ///< for ScoreOptions::lowest: the lower of two lines written as chords
    std::string name;    ///< as printed, its id where it has none; a line among several by its voice. Unique
    VoiceType voice = VoiceType::other; ///< by its name, else by its order and range
    bool named = false;                 ///< by its name
    bool words = false;                 ///< has words of its own
    int verses = 0;                     ///< lines of words it has
};

/// From the top of the page down: the parts that carry words (under a tenth of their notes at least), and
/// those without whose name or instrument says a voice; of a part each voice that sings a line of its own:
/// one with words, or with at least half as many notes as the one with most, or 16 notes that begin with
/// its; and where half of a line are
/// chords, their highest and their lowest notes. Voices by name, else of four lines in four ranges S A T B,
/// else by where the line lies (common practice, no source). From the bytes of a MusicXML file; `name` is its
/// name as messages give it. Throws InputError, also where nothing is sung.
std::vector<ScorePart> sung_parts(std::string bytes, std::string const& name);

/// Which notes of a line want words.
enum class Wanting {
    everywhere, ///< all: it has none
    later,      ///< in bars that come again, where others have other words
    gaps,       ///< in bars without any, of a line that mostly leaves its words to another
};

/// What a line took over.
struct Borrowed {
    Passage const* from = nullptr; ///< null: nothing
    std::size_t syllables = 0;
};

/// Gives a line words of the one it sings with, of `others`: the line that begins the most notes together
/// with it. What begins alone continues the syllable before. Nothing is taken where none begins half of the
/// notes with it. (Gaps are filled where three quarters of a bar, two notes at least, begin together with
/// syllables of that line, and the line has less than two thirds of the words it could have; our choice.)
Borrowed borrow_words(Passage& line, std::vector<Passage const*> const& others, Wanting wanting);

} // namespace vowelway::io
