// SPDX-License-Identifier: MIT
// Many songs and many singers seen together, from the records of their plans.
// Threads: plain values.
#pragma once

#include "vowelway/plan/record.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::plan {

/// A song for a singer, in the key that suits best.
struct OverviewCell {
    int best = 0;          ///< semitones from where the singer would have it
    double need = 0;       ///< what speaks against it in that key, for a second of song
    double need_as_is = 0; ///< and where it stands; the best where that was not planned
    std::string why;       ///< what most speaks against it: "lies high"; empty where little does
};

struct OverviewSong {
    std::string song, title, composer, error;
    std::vector<std::optional<OverviewCell>> of; ///< for each singer; nothing where it was not planned
    double need = 0;                             ///< mean over the singers
};

struct Overview {
    std::string technique;
    std::vector<std::string> singers; ///< their names; of an average its voice type
    std::vector<OverviewSong> songs;  ///< the least needy first
};

/// Of one technique; empty: of the first there is. Singers in the order of their files.
Overview overview_of(std::vector<PlanRecord> const& records, std::string const& technique = {});

/// How alike two songs are in what they ask of the same singers.
struct Likeness {
    std::string song, title;
    double distance =
        0; ///< in standard deviations over all songs of the survey, mean over figures and singers
};
/// The others, the most alike first. Throws InputError where no song has that name.
std::vector<Likeness> songs_like(std::vector<PlanRecord> const& records, std::string const& song);

} // namespace vowelway::plan
