// SPDX-License-Identifier: MIT
// From measurements to what a profile remembers, and what changed in it. Plain values; nothing is read or
// written.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/measure.hpp"
#include "vowelway/core/profile.hpp"
#include "vowelway/core/units.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::analysis {

/// How a value found with this kind of probe is known.
Method method_of(ProbeKind kind);

/// The measured vowels as entries of a history: those with fR1 and fR2. Of several probes of a vowel the
/// surest comes last (whisper, creak, sung), for what is appended last becomes the vowel's current value.
/// `date` is an ISO 8601 day.
std::vector<Measurement> measured_history(Measurements const& measurements, std::string const& date,
                                          std::string const& note);

/// The singer's own shifts as learned this time, with the recordings of those known before; empty when
/// nothing was learned.
std::vector<ProbeShift> learned_shifts(Measurements const& measurements, std::vector<ProbeShift> const& known,
                                       std::string const& date);

/// A profile that begins with a history: the last entry of each vowel is its value.
Profile begin_profile(std::string const& name, VoiceType voice, Tuning const& tuning,
                      std::vector<Measurement> history, std::vector<ProbeShift> shifts);

/// The measurement that each vowel's present numbers come from, in the order of the profile's vowels; vowels
/// are left out whose numbers the history does not know (typed, or changed by hand since), and estimated
/// ones.
std::vector<Measurement> sources_of(Profile const& profile);

/// From one measurement of a vowel to the next.
struct Change {
    Cents r1, r2;                            ///< upward
    Cents r1_sd, r2_sd;                      ///< of that interval: both deviations, as variances
    bool r1_clear = false, r2_clear = false; ///< more than two of these deviations
};

struct HistoryEntry {
    Measurement measurement;
    std::optional<Change> change; ///< against the entry before it of the same vowel
};

/// Ordered along the rim of the vowel chart; within a vowel by day, then as in the file (entries without a
/// day first). Only the vowels given, or all when none are.
std::vector<HistoryEntry> history_of(Profile const& profile, std::vector<Vowel> const& only);

} // namespace vowelway::analysis
