// SPDX-License-Identifier: MIT
// The vocal line as it stands on the page: what an engraver needs, and no more.
// Times are in quarter notes; the sung result (seconds, merged ties) is in passage.hpp.
#pragma once

#include "vowelway/core/pitch.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace vowelway {

struct Clef {
    char sign = 'G'; ///< 'G', 'F', 'C'; 'P' percussion; 'T' tablature
    int line = 2;    ///< counted from the bottom line, 1..5
    int octave_change = 0;
    friend bool operator==(Clef const&, Clef const&) = default;
};

struct KeySignature {
    int fifths = 0; ///< sharps positive, flats negative
    friend bool operator==(KeySignature const&, KeySignature const&) = default;
};

struct TimeSignature {
    enum class Sign { numbers, common, cut, none };
    std::string beats = "4"; ///< may be a sum, "3+2"
    int beat_type = 4;
    Sign sign = Sign::numbers;
    friend bool operator==(TimeSignature const&, TimeSignature const&) = default;
};

enum class NoteValue {
    maxima,
    longa,
    breve,
    whole,
    half,
    quarter,
    eighth,
    n16th,
    n32nd,
    n64th,
    n128th,
    n256th
};
enum class BeamPart { begin, through, end, forward_hook, backward_hook };
enum class StemDirection { automatic, up, down, none };

/// Accidental signs as printed before a head.
enum class Accidental { sharp, flat, natural, double_sharp, double_flat, quarter_sharp, quarter_flat };

struct StaffHead {
    SpelledPitch written; ///< as printed on the staff, before transposition and octave clef
    std::optional<Accidental> accidental;
    bool tie_begins = false, tie_ends = false;
};

/// A note, chord or rest on the staff.
struct StaffEvent {
    double onset = 0;  ///< quarter notes from the start of the measure
    double length = 0; ///< quarter notes; 0 for grace notes
    NoteValue value = NoteValue::quarter;
    int dots = 0;
    bool grace = false;
    bool measure_rest = false;
    std::vector<StaffHead> heads; ///< empty: a rest
    StemDirection stem = StemDirection::automatic;
    std::vector<BeamPart> beams; ///< one for each beam line, outermost first; empty: flag or none
    struct Tuplet {
        int actual = 3, normal = 2;
        bool begins = false, ends = false;
        friend bool operator==(Tuplet const&, Tuplet const&) = default;
    };
    std::optional<Tuplet> tuplet;
    int slurs_begin = 0, slurs_end = 0;
    bool fermata = false, staccato = false, accent = false, tenuto = false, breath_after = false;
    std::optional<std::size_t> sung; ///< index in Passage::notes of the sung note it begins or continues

    bool rest() const { return heads.empty(); }
};

enum class Barline { regular, double_, final, none, dashed };

/// A word or sign above the staff at an onset: tempo, expression, dynamics, rehearsal letter.
struct StaffText {
    enum class Kind { tempo, words, dynamic, rehearsal };
    double onset = 0;
    Kind kind = Kind::words;
    std::string text;
};

struct StaffMeasure {
    std::string number;       ///< as printed; empty or "X1" style for implicit bars is kept as in the source
    bool implicit = false;    ///< a pick-up or a bar split by a repeat: its number is not printed
    double length = 4;        ///< quarter notes
    std::optional<Clef> clef; ///< set where it changes, and in the first measure
    std::optional<KeySignature> key;
    std::optional<TimeSignature> time;
    bool repeat_begins = false, repeat_ends = false;
    std::string ending; ///< "1.", "2." where a volta begins here
    Barline right = Barline::regular;
    std::vector<StaffEvent> events; ///< in time order
    std::vector<StaffText> texts;
    std::vector<std::pair<double, Clef>> clef_changes; ///< within the measure, by onset
};

struct Staff {
    std::vector<StaffMeasure> measures;
};

} // namespace vowelway
