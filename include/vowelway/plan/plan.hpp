// SPDX-License-Identifier: MIT
// The plan: everything the outputs say, computed once, as plain values. No output computes anything.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/acoustics/gesture.hpp"
#include "vowelway/acoustics/hearing.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/passage.hpp"
#include "vowelway/core/resonance.hpp"
#include "vowelway/core/singer.hpp"
#include "vowelway/plan/cost_terms.hpp"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::plan {

/// The pitch at which nfo = fRk. sd is that of the resonance, carried over.
struct Crossing {
    Harmonic harmonic;
    ResonanceNumber resonance;
    Pitch pitch;
    Cents sd;
    /// "2fo = fR1"
    std::string str() const;
};

/// Where a sung pitch lies for a vowel.
enum class Zone {
    open,    ///< 2fo < fR1
    turning, ///< 2fo within the uncertainty of fR1
    close,   ///< fo < fR1 < 2fo
    meeting, ///< fo within the uncertainty of fR1
    above    ///< fo > fR1
};
inline constexpr std::array all_zones{Zone::open, Zone::turning, Zone::close, Zone::meeting, Zone::above};
std::string_view to_string(Zone zone);

/// What a pitch is to a vowel, with the probabilities that follow from the standard deviation of fR1.
struct ZoneReading {
    Zone zone = Zone::open;
    double p_turned = 0; ///< P(2fo > fR1), 0..1
    double p_above = 0;  ///< P(fo > fR1), 0..1
};

/// A heard place against the vowel's own, in Bark.
struct HeardOffset {
    Bark openness; ///< + more open
    Bark front;    ///< + more front
};

/// What to aim at. Equal to the vowel's own resonances unless the advice is `modify`.
struct Target {
    Resonance r1, r2;
    Vowel shade; ///< the IPA shade that names it
};

/// A decision about one vowel at one pitch, with its reasons and its certainty.
struct Decision {
    ZoneReading zone;
    acoustics::HeardVowel heard;      ///< with the advice followed
    acoustics::HeardVowel heard_kept; ///< if the shape is kept as it is
    Advice advice = Advice::hold;
    double certainty = 1; ///< share of draws over the measured deviations that give the same advice, 0..1
    AdviceShares shares;  ///< of the draws; the likeliest is the advice
    HeardOffset kept;     ///< where the vowel is heard if the shape is kept
    /// Levels of fo, 2fo, .. (eight at most), 1 m from the mouth in the open, dB re 20 µPa: the shape kept,
    /// and the advice followed.
    std::vector<Decibels> levels_kept, levels_planned;
    bool turned = false;               ///< at or above VowelPlan::turning, 2fo = fR1 of the vowel's own shape
    bool turns_here = false;           ///< and the line has just come up to it
    CostTerms cost_kept, cost_planned; ///< what the shape kept and the one planned cost
    Target target;
    std::vector<acoustics::Gesture> gestures; ///< empty unless `modify`
    Decibels gain;                            ///< level with the advice followed against the shape kept
    Bark text_cost;    ///< heard distance from the intended vowel with the advice followed
    std::string why;   ///< one sentence with the numbers that decided
    std::string brief; ///< a few words for the music stand: "jaw a little open"
};

/// One sung note of the passage, planned.
struct NotePlan {
    std::size_t note = 0;             ///< index in Plan::passage.notes
    std::optional<std::size_t> vowel; ///< index in Plan::vowels; nothing: no vowel to plan
    std::optional<Decision> decision; ///< present when there is a vowel
    double importance = 0;            ///< 0..1: what to watch first (length, change of advice, certainty)
};

/// From the lowest pitch of the plan upwards, where a vowel may be left alone.
struct PassiveRange {
    Pitch from, to;
    Cents to_sd;                        ///< uncertainty of the upper end
    bool reaches_top = false;           ///< `to` is the top of the planned range: nothing to modify in it
    std::optional<Pitch> migrates_from; ///< within it: where the heard vowel begins to drift
};

/// One semitone of a vowel's strip.
struct PitchCell {
    Pitch pitch;
    Decision decision;
    Duration sung; ///< time the passage spends on this vowel within a quarter tone of this pitch
};

/// Of the shapes that gestures reach from a vowel by the model: those of one fR1, from the lowest fR2 to the
/// highest. The planner looks no further than the departures of its grid, so an end is the limit of the reach
/// only where it says so.
struct ReachRow {
    Frequency r1, r2_low, r2_high;
    bool low_is_limit = false, high_is_limit = false;
    bool r1_is_limit = false; ///< no higher fR1 is reached
};

struct VowelPlan {
    VowelResonances resonances;
    Crossing turning; ///< 2fo = fR1: from here on the vowel turns over
    /// Where the level of fo first exceeds that of 2fo, going up from there with the shape kept: the turn is
    /// behind. Where no level changes sign, the pitch of `turning`.
    Pitch fo_leads;
    Crossing meeting;                ///< fo = fR1
    std::vector<Crossing> crossings; ///< every nfo = fRk within the plan's range, low to high
    std::vector<PitchCell> strip;    ///< every semitone of the plan's range, low to high
    std::optional<PassiveRange> passive_range;
    Duration sung;                 ///< in the passage
    std::vector<ReachRow> reach{}; ///< where the model's gestures lead from this vowel, fR1 low to high
};

struct Plan {
    Singer singer;
    std::string technique;
    PitchRange range;
    Passage passage;               ///< without notes when only a range was given
    std::vector<VowelPlan> vowels; ///< in the order of the chart's rim
    std::vector<NotePlan> notes;   ///< one for each note of the passage, in order
    CostTerms cost{};              ///< of all notes as planned
    Remarks remarks;               ///< everything assumed or guessed on the way, and the cautions
};

} // namespace vowelway::plan
