// SPDX-License-Identifier: MIT
// Is it where it should be? New probes against a profile or a plan's targets, and the drift over weeks.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/measure.hpp"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::analysis {

/// Where a resonance should be.
struct Aim {
    std::array<std::optional<Resonance>, 3> tract;
    /// The formants of an earlier probe of the same kind, if there was one: compared sound with sound, the
    /// probe's shift cancels and much smaller changes can be told.
    std::array<std::optional<Frequency>, 3> heard;
};

struct Distance {
    Frequency found, found_sd, aim, aim_sd;
    Cents distance;          ///< + is above the aim
    double in_sds = 0;       ///< (found - aim) over the deviation of the difference
    bool same_probe = false; ///< formant against formant of the same kind of probe; else tract against tract
};

enum class Verdict {
    there,   ///< within two deviations and within `near_enough`
    unclear, ///< within two deviations, which are wider than `near_enough`
    moved    ///< more than two deviations away, and further than a listener's difference limen
};
std::string_view to_string(Verdict verdict);
inline constexpr Cents near_enough{200}; ///< our choice: two semitones of a turning point
inline constexpr double least_noticed =
    0.03; ///< of F: smaller differences are never called a move (difference limens of
          ///< 1.5 to 3 %; D. Kewley-Port & C. S. Watson, J. Acoust. Soc. Am. 95, 1994, 485)

struct ProbeComparison {
    Vowel vowel;
    ProbeKind kind = ProbeKind::whisper;
    int takes = 0;
    std::array<std::optional<Distance>, 3> resonances;
    Verdict verdict = Verdict::there; ///< the worse of fR1 and fR2
    std::string says;                 ///< "fR1 1.8 semitones low (2.6 SD); fR2 there"
};
ProbeComparison compare_with(MeasuredVowel const& found, Aim const& aim);

/// One dated value of the past.
struct DatedValue {
    double days = 0; ///< from any fixed day
    Frequency centre, sd;
};
struct Trend {
    Cents per_week;
    Cents per_week_sd;
    int points = 0;
    double without_one = 0; ///< the slope in its deviations when the day that makes it is left out; 0 or
                            ///< less: it was a single odd day
    /// A course: it goes on without any one of its days.
    bool clear() const {
        return points >= 3 && without_one > 1 &&
               (per_week.value > 2 * per_week_sd.value || per_week.value < -2 * per_week_sd.value);
    }
};
/// Weighted straight line through log frequency against time. Nothing for less than three values or a single
/// day.
std::optional<Trend> trend_of(std::vector<DatedValue> const& values);

/// One vowel's probes compared with one thing they should be like.
struct Checked {
    enum class Against {
        profile, ///< the singer's own resonances, or, where there was one, the last probe of the same kind
        plan     ///< a target of a plan
    };
    ProbeComparison comparison;
    Against against = Against::profile;
    Aim aim;
    std::string shade;                          ///< of the plan's target, IPA
    std::vector<std::string> bars;              ///< that have this target
    std::array<std::optional<Trend>, 2> trends; ///< of F1 and F2 over the profile's history and these probes

    /// "last probe", "profile" or "plan".
    std::string_view against_what() const;
};

/// Days since 1970-01-01 of an ISO 8601 day; nothing if it is none.
std::optional<double> day_number(std::string_view iso);

} // namespace vowelway::analysis
