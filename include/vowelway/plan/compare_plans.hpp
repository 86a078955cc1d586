// SPDX-License-Identifier: MIT
// Two singers, one song: where their plans part.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/plan.hpp"

#include <array>
#include <cstddef>
#include <string_view>
#include <vector>

namespace vowelway::plan {

/// In what two decisions about one note differ; the first that holds.
enum class Parting {
    none,
    advice, ///< one may leave the vowel alone where the other may not, or one's vowel drifts
    shape,  ///< both modify, but the ways from the own vowel to the target differ by more than `same_way` in
            ///< fR1 or fR2
    sound ///< the same advice, but one voice has turned (P(2fo > fR1) beyond 95 %) and the other not (below 5
          ///< %)
};
std::string_view to_string(Parting parting);

inline constexpr Cents same_way{
    200}; ///< our choice: two semitones, as near as a target is met (analysis/check.hpp)

/// One sung note with a vowel.
struct ComparedNote {
    std::size_t note = 0; ///< index in the passage and in the notes of both plans
    Parting parting = Parting::none;
    /// How far each singer goes from the own fR1 and fR2 to the target; nothing unless advised to modify.
    std::array<std::array<Cents, 2>, 2> way{};
    /// Of an advice or shape: the product of both certainties, so at most how often both draws keep this
    /// difference, the singers' measurements being independent. Of a sound: the probability that the one has
    /// turned and the other not. 0..1.
    double certainty = 1;
    double weight =
        0; ///< 0..1, what to speak of first: time sung, times certainty, the more when one modifies
};
/// Beyond this a difference is shown as sure (our choice).
inline constexpr double sure_parting = 0.75;
/// Below this a difference is no news and is not listed where people read (our choice); the JSON has all.
inline constexpr double listed_parting = 0.5;

/// How long a singer does what.
struct AdviceTimes {
    std::array<Duration, 3> of; ///< in the order of Advice
    Duration all() const { return of[0] + of[1] + of[2]; }
};

struct PlansCompared {
    std::array<Plan, 2> plans;
    std::vector<ComparedNote> notes; ///< all notes with a vowel, in the order sung
    std::array<AdviceTimes, 2> times;
    Duration parting, surely_parting; ///< time sung on notes that differ, and on those that differ surely
    Remarks remarks;                  ///< of both plans, each once
};

/// Throws InputError when the plans are not of the same notes and vowels, or have none.
PlansCompared compare_plans(Plan first, Plan second);

} // namespace vowelway::plan
