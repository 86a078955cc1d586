// SPDX-License-Identifier: MIT
// Where a singer's resonances are due: what is known of the singer, the rest from the average of the voice
// type.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/measure.hpp"
#include "vowelway/core/profile.hpp"
#include "vowelway/core/singer.hpp"

#include <string>
#include <vector>

namespace vowelway::analysis {

/// The singer's own vowels and, for those the profile lacks, the average's, scaled by the mean ratio of fR2
/// over the vowels both have (as tracts of different length are); so is the tract length where it is not
/// known. Without a vowel in common the scale is 1. A singer without any vowel becomes `average`.
Singer reference_singer(Singer const& own, Singer const& average);

/// The singer's own shifts instead of the published ones, the recordings they rest on, and the earlier probes
/// that may teach more of them.
void use_shifts(MeasureRequest& request, Profile const& profile);

/// What is said with every measurement: `before` (what was assumed until then) and the reference come first,
/// the caution last.
void add_remarks(Measurements& measurements, Remarks before, Singer const& reference);

/// Of a recording made at a rate: up to where it holds sound, and a caution where fR3 may lie above.
Frequency band_of(Frequency rate);
void warn_of_band(std::string const& name, Frequency rate, Remarks& remarks);

} // namespace vowelway::analysis
