// SPDX-License-Identifier: MIT
// What a teacher wants to know of a singer before the lesson: how old the measurement is, what is missing,
// what has changed.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/history.hpp"
#include "vowelway/core/profile.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::analysis {

struct StudioSinger {
    Profile profile;
    std::string last_measured;  ///< ISO 8601 day; empty where no day is known
    std::optional<int> days;    ///< since then, up to the day it is asked for; never negative
    std::vector<Vowel> missing; ///< of i e ɛ a ɔ o u: not in the profile, or estimated
    std::vector<HistoryEntry>
        changed;         ///< the last measurement of a vowel, where it is clearly another than before
    bool is_old() const; ///< it is time to measure again
};
/// After this a measurement is called old (our choice: resonances follow technique, and a term has passed).
inline constexpr int old_after_days = 120;

/// `today` as an ISO 8601 day.
StudioSinger studio_singer(Profile profile, std::string const& today);

/// Days from one ISO 8601 day to another; nothing where one of them is none.
std::optional<int> days_between(std::string const& from, std::string const& to);

} // namespace vowelway::analysis
