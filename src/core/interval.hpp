// SPDX-License-Identifier: MIT
// Transposition that keeps the spelling: intervals on the line of fifths. Private to the library.
#pragma once

#include "vowelway/core/pitch.hpp"

namespace vowelway {

/// A musical interval: its size and its place on the line of fifths (C 0, G +1, F -1).
/// A step count d of c semitones is 7c - 12d fifths: a major second up (1, 2) is +2, a minor third (2, 3) -3.
struct Interval {
    double semitones = 0;
    int fifths = 0;

    friend Interval operator+(Interval a, Interval b) {
        return {a.semitones + b.semitones, a.fifths + b.fifths};
    }
    friend bool operator==(Interval const&, Interval const&) = default;
};

/// The interval of this size that changes a signature of `fifths` into the one with the fewest signs.
Interval interval_for_key(double semitones, int fifths);

/// The pitch moved. Should the spelling need more than two signs, the simplest spelling is taken.
SpelledPitch moved(SpelledPitch const& pitch, Interval by);

} // namespace vowelway
