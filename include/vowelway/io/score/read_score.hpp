// SPDX-License-Identifier: MIT
// A score or a passage file in, the vocal line out.
#pragma once

#include "vowelway/core/passage.hpp"
#include "vowelway/core/singer.hpp"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

namespace vowelway::io {

inline constexpr int every_verse = -1;

struct ScoreOptions {
    /// The part: its name (or the beginning of it), its id, or its number from 1; empty: choose.
    /// ".2" after it takes the second of the voices that carry words in that part ("Voice.2", "1.2"); after
    /// those come voices without words that have at least half as many notes, or sing along for some bars.
    std::string part;
    int verse = 0; ///< from 1; 0: choose; every_verse: the music as it is sung, each pass with its words
    /// Moves what is sung; the staff follows unless it is whole octaves. Nothing: the octave that suits the
    /// voice, with a remark where it is not the one written.
    std::optional<double> transpose_semitones{};
    Tuning tuning;
    std::optional<PitchRange> singer_range{}; ///< notes of chords are taken from it
    VoiceType voice = VoiceType::other;       ///< whose octave is looked for
    bool lowest = false;                      ///< of notes sung together the lowest is taken, not the highest
    bool together = false;                    ///< verses of all parts decide how often the music comes again
};

/// Bounds. A file past them is refused, not cut. (A YAML passage: 1 MiB, a note ten minutes, one hour in
/// all.)
inline constexpr std::uintmax_t largest_score_file = 64u << 20; ///< bytes on the disk
inline constexpr std::uintmax_t largest_score_text = 64u << 20; ///< bytes of XML once unpacked
inline constexpr int deepest_score_nesting = 64;                ///< elements within elements
inline constexpr int most_score_elements = 4'000'000;
inline constexpr int most_bar_events = 5000; ///< notes and rests of one part in one bar
inline constexpr int most_part_voices = 64;
inline constexpr int most_lyric_lines = 100;
inline constexpr int most_score_parts = 300;
inline constexpr int most_score_bars = 20'000;       ///< of a part; the longest acts of opera have some 3000
inline constexpr int most_sung_notes = 20'000;       ///< of the line, in a score or a passage
inline constexpr int longest_lyric = 1000;           ///< bytes under one note in one line of words
inline constexpr int longest_text = 64 << 10;        ///< bytes of any other text between two tags
inline constexpr int longest_attribute = 4000;       ///< bytes of an attribute, or of a name
inline constexpr std::size_t most_lyrics = 4u << 20; ///< bytes of all words of a part

/// Reads MusicXML (1.0 to 4.0, partwise or timewise, plain or compressed), a YAML passage, or a text of
/// syllables and pitches (.txt .song): known by name and content. Names other formats, which it refuses.
///
/// What is sung, and how it is read:
/// - ties are merged unless the later note begins a syllable of its own; a note without a syllable
///   continues the syllable before it (`melisma`);
/// - of notes sung together the highest is taken (within the singer's range where one is given);
/// - a grace note without a syllable of its own stays on the staff and is not sung separately; one with
///   a syllable takes an eighth of a quarter note, at most half, from the note after it;
/// - cue notes and notes without pitch (spoken) are left out; a syllable under a rest goes
///   to the note after it if that has none, else it is left out;
/// - where a second voice on the same staff carries the chosen verse and the first does not, the second
///   is sung there: that is how scores write verses of different rhythm;
/// - repeats, endings, jumps and verses are followed where every verse is asked for; then bars that come
///   again are named "12 (2nd time)". Otherwise each bar is read once, and a remark says so;
/// - bar numbers are as printed; in a bar split in two the second half keeps the number and goes on
///   counting beats; a pick-up counts from where its bar would begin;
/// - a refrain printed under the first verse only is sung in every verse;
/// - tempo marks of any part set the time; without one a quarter lasts 1/72 minute and a remark says so;
/// - a line that lies an octave from where the voice sings is taken there (a man's part in a treble clef
///   without its 8), unless a transposition is asked for; YAML passages stay as they are written;
/// - MusicXML notes give the pitch that octave clefs stand for, so only <transpose> moves it
///   (MusicXML 4.0, <clef-octave-change>, <transpose>).
///
/// Throws InputError with file, line and bar. What was chosen or assumed is in `Passage::remarks`.
Passage read_score(std::filesystem::path const& file, ScoreOptions const& options = {});

/// The same from the bytes of a file; `name` is the file's name with its extension, as messages give it.
Passage parse_score(std::string bytes, std::string const& name, ScoreOptions const& options = {});

} // namespace vowelway::io
