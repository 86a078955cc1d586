// SPDX-License-Identifier: MIT
// A teacher's folder: singers, songs, and the page of one singer.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/studio.hpp"
#include "vowelway/plan/keys.hpp"

#include <string>
#include <vector>

namespace vowelway::report {

struct StudioSong {
    std::string file, title, composer;
    std::string low, high; ///< of the line as written; empty where it could not be read
    std::string error;     ///< why not
};

struct StudioPlan {
    std::string file, title, singer;
    bool behind = false; ///< a score or a profile in the folder is newer
};

struct Studio {
    std::string folder, today;
    std::vector<std::pair<std::string, analysis::StudioSinger>> singers; ///< by file
    std::vector<std::pair<std::string, std::string>> unread; ///< profiles that could not be read, and why
    std::vector<StudioSong> songs;
    std::vector<StudioPlan> plans;
};

std::string studio_text(Studio const& studio);
/// Ends with a line break.
std::string studio_json(Studio const& studio);

/// "23 days ago", "today"; "no day is known".
std::string age_of(analysis::StudioSinger const& singer);
/// "/ɛ/ /ɔ/"; "none".
std::string missing_of(analysis::StudioSinger const& singer);
/// "/a/: fR1 has risen by 1.2 semitones (since 2026-05-02)"; one for each vowel that clearly changed.
std::vector<std::string> changes_of(analysis::StudioSinger const& singer);

/// The lines of a page: how old the measurement is, what is missing, what changed.
std::vector<std::string> known_of(analysis::StudioSinger const& singer);

/// One page on a singer: what is known, what changed, and what each song asks for in the key that suits.
std::string studio_page_text(analysis::StudioSinger const& singer, std::vector<plan::KeysPlan> const& songs);

} // namespace vowelway::report
