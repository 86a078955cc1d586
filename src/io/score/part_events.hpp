// SPDX-License-Identifier: MIT
// One part of a score, bar by bar, with the time of everything in it. Private to the library.
#pragma once

#include "core/interval.hpp"
#include "io/score/xml_source.hpp"
#include "vowelway/core/notation.hpp"

#include <optional>
#include <pugixml.hpp>
#include <string>
#include <vector>

namespace vowelway::io {

/// A tolerance for times in quarter notes: far below the shortest note, far above rounding.
inline constexpr double time_tolerance = 1e-6;

/// A bar of a part: the element that holds its music, and the one with the number, which differ in a
/// score-timewise.
struct MeasureNode {
    pugi::xml_node music, measure;
};

struct PartInfo {
    std::string id, name;
    bool vocal = false; ///< its instrument or its name says a voice
    std::vector<MeasureNode> measures;
};

/// The parts in the order of the list, then those that only have music; with their bars.
std::vector<PartInfo> list_parts(XmlSource const& source);

/// A note, chord or rest of one voice.
struct PartEvent {
    double onset = 0, length = 0; ///< quarter notes from the start of the bar
    std::string voice;            ///< "1" where the score names none
    int staff = 1;
    bool grace = false, cue = false, rest = false, unpitched = false, measure_rest = false;
    std::vector<pugi::xml_node> notes; ///< the <note> elements: one, or those of a chord
    std::vector<pugi::xml_node> small; ///< of a chord that begins with a cue note: that; its words count
    int clef_octave = 0;               ///< of the clef in force
    int fifths = 0;                    ///< of the key in force
    Interval transpose;                ///< from the written to the sounding pitch
    pugi::xml_node node() const { return notes.front(); }
    /// The first of all of its elements.
    pugi::xml_node begins() const { return small.empty() ? notes.front() : small.front(); }
    std::vector<pugi::xml_node> with_words() const {
        auto out = small;
        out.insert(out.end(), notes.begin(), notes.end());
        return out;
    }
};

struct PartDirection {
    double onset = 0;
    int staff = 0; ///< 0: not said
    pugi::xml_node node;
};

struct StaffChange {
    double onset = 0;
    int staff = 0; ///< 0: all
    std::optional<Clef> clef;
    std::optional<KeySignature> key;
    std::optional<TimeSignature> time;
    std::optional<Interval> transpose;
};

struct PartMeasure {
    std::string number;
    bool implicit = false;
    std::size_t printed = 0; ///< its place in the score as printed, from 0
    int pass = 1;            ///< how often it has been reached, as sung
    std::string verse;       ///< the line of words that is sung in this pass; empty: the one chosen
    pugi::xml_node node;     ///< the element that holds the part's music of this bar
    double filled = 0;       ///< the farthest point reached, in quarter notes
    double nominal = 4;      ///< by the time signature; 0 when there is none
    int beat_type = 4;
    std::vector<PartEvent> events; ///< by onset, then in the order of the file
    std::vector<PartDirection> directions;
    std::vector<StaffChange> changes; ///< by onset
    std::vector<pugi::xml_node> barlines;
};

struct Part {
    PartInfo info;
    std::vector<PartMeasure> measures;
    int staves = 1;
    int early_backups = 0; ///< places that step back before the start of their bar
};

/// Reads a part's bars. Throws InputError with line and bar for durations, divisions and pitches that are
/// missing, not positive or not finite.
Part read_part(XmlSource const& source, PartInfo const& info);

/// The written pitch of a <note> with <pitch>. Throws InputError.
SpelledPitch pitch_of(XmlSource const& source, pugi::xml_node note, std::string const& bar);

/// "bar 12".
std::string bar_name(PartMeasure const& measure);

} // namespace vowelway::io
