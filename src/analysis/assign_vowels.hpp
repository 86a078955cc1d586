// SPDX-License-Identifier: MIT
// Which sound is which vowel of the list. Private to the analysis layer.
#pragma once

#include "vowelway/analysis/measure.hpp"

#include <vector>

namespace vowelway::analysis {

struct Assigned {
    std::size_t recording = 0, stretch = 0;
    TimeSpan span;
    Vowel vowel;
};

/// By the cues where there are any; one file for each vowel when there are as many files as vowels (or only
/// one vowel); else each file goes through the whole list, `repeat` times. Throws InputError when the counts
/// do not agree.
std::vector<Assigned> assign_vowels(std::vector<Recording> const& recordings, MeasureRequest const& request,
                                    Remarks& remarks);

} // namespace vowelway::analysis
