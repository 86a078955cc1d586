// SPDX-License-Identifier: MIT
// What the planner takes a singer's voice to be, for all who compute or sound the same note.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/acoustics/source.hpp"
#include "vowelway/core/passage.hpp"
#include "vowelway/core/singer.hpp"
#include "vowelway/core/technique.hpp"

#include <span>

namespace vowelway::plan {

/// The source of a technique.
acoustics::Source source_of(Technique const& technique);

/// Loudness against mezzo-forte: 3.5 dB a step of the dynamic marks (our judgement: pp -10, ff +7 dB).
Decibels loudness_of(SungNote const& note);

/// Glottis to lips: the profile's, else estimated from the singer's vowels, or from `planned` where the
/// profile has none.
Length tract_length_of(Singer const& singer, std::span<VowelResonances const> planned = {});

} // namespace vowelway::plan
