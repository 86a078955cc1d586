// SPDX-License-Identifier: MIT
// From notes to what is sung at each moment. Private to the layer.
#pragma once

#include "vowelway/sound/voice.hpp"

#include <cstddef>
#include <memory>
#include <vector>

namespace vowelway::sound {

struct LineNote {
    Duration start, end; ///< as sounding; in order, not overlapping
    Pitch pitch;
    Frequency r1, r2;
    Decibels loudness;
    double size = 1;          ///< a hum is softer
    bool new_syllable = true; ///< a consonant may have stood here
};

/// A gap shorter than this is none.
inline constexpr Duration joined_within = seconds(0.06);

/// The moments of the line. Between joined notes pitch, shape and loudness move smoothly, the shape first and
/// slowest; a phrase begins softly and ends softly. (Times of the transitions: our judgement.)
class LineCourse {
  public:
    LineCourse(std::shared_ptr<std::vector<LineNote> const> notes, Vibrato const& vibrato)
        : notes_(std::move(notes)), vibrato_(vibrato) {}
    /// In order of time.
    Moment operator()(Duration t);

  private:
    bool joined(std::size_t i) const; ///< to the note before
    double size_at(double t) const;

    std::shared_ptr<std::vector<LineNote> const> notes_;
    Vibrato vibrato_;
    std::size_t now_ = 0;
};

} // namespace vowelway::sound
