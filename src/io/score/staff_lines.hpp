// SPDX-License-Identifier: MIT
// The line as it stands on the page. Private to the library.
#pragma once

#include "io/score/sung_line.hpp"
#include "vowelway/core/notation.hpp"

#include <vector>

namespace vowelway::io {

/// The staff of the line. `shift` moves heads and key (fifths and semitones); accidentals are then set anew,
/// as they are when the source has none at all.
Staff staff_of(XmlSource const& source, std::vector<Part> const& parts, std::size_t own,
               VoiceLine const& line, Timeline const& time, SungLine const& sung, Interval shift);

/// Note value and dots for a length in quarter notes: exact where one exists with up to three dots, else the
/// longest value that fits.
struct ValueAndDots {
    NoteValue value;
    int dots;
};
ValueAndDots value_of(double quarters);

/// Sets the accidentals of a bar's heads by the rule of the staff: the signature holds, a sign holds to the
/// bar line at its own octave, a tied head needs none.
void set_accidentals(StaffMeasure& measure, int fifths);

} // namespace vowelway::io
