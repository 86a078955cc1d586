// SPDX-License-Identifier: MIT
// What a profile remembers: every measurement ever made, and how the singer's probes differ from the tract.
#pragma once

#include "vowelway/core/resonance.hpp"
#include "vowelway/core/singer.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace vowelway {

/// One vowel measured on one day. The resonances are those of the tract: what the probe itself
/// changes (Swerdlin, Smith & Wolfe 2010) is already taken off, and its spread is in the deviations.
struct Measurement {
    std::string date; ///< ISO 8601 day; empty only where a typed value was kept whose day is unknown
    Method method = Method::creak;
    Vowel vowel;
    int probes = 1; ///< how many takes it is the average of, at least 1
    Resonance r1, r2;
    std::optional<Resonance> r3, r4;
    std::array<std::optional<Frequency>, 4>
        heard; ///< F1..F4 as found in the sound, before the shift was taken off
    std::string note;
};

/// How far one resonance of a singer's probe lies above the same resonance of the tract.
struct ShiftOfResonance {
    Frequency mean; ///< may be negative
    Frequency sd;   ///< > 0
};

/// The singer's own shift for one kind of probe, learned where a vowel was measured in two ways.
struct ProbeShift {
    Method method = Method::whisper;                   ///< whisper or creak
    std::array<std::optional<ShiftOfResonance>, 4> of; ///< fR1..fR4
    int pairs = 0;                                     ///< vowels measured both ways that it rests on
    std::string date;                                  ///< ISO 8601 day of the last of them, or empty
    std::vector<std::string>
        recordings; ///< digests of those it was learned from (analysis::Measurements::learned_from)
};

/// A profile with its memory. History is in the order of the file, oldest first as written.
struct Profile {
    Singer singer;
    std::vector<Measurement> history;
    std::vector<ProbeShift> shifts; ///< at most one for each method
};

} // namespace vowelway
