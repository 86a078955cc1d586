// SPDX-License-Identifier: MIT
// What a teacher listens for, told of all vowels of a session together, probes of one kind against earlier
// ones of the same kind: the probe's shift cancels, and small changes can be told. Threads: plain values; the
// functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/check.hpp"
#include "vowelway/analysis/lesson_point.hpp"
#include "vowelway/analysis/measure.hpp"

#include <vector>

namespace vowelway::analysis {

/// The points, what is to be mended first. `checked` may be empty (a first measurement).
std::vector<LessonPoint> lesson_points(Measurements const& measurements, std::vector<Checked> const& checked);

/// How the noise of a whisper is balanced, against even noise just above the glottis in a tract with these
/// formants: level around F1 less level around F2, measured less expected, dB. Even noise just above the
/// glottis gives -7 (/i/) to 0 (/u/) in the model tracts; noise that falls by 3 dB in an octave 1 to 3, by 6
/// dB 4 to 10 (tests/whole/lesson_test.cpp). The deviation is our judgement.
struct Balance {
    double mean, sd;
};
inline constexpr Balance ordinary_balance{-2.5, 4};

} // namespace vowelway::analysis
