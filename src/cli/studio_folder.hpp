// SPDX-License-Identifier: MIT
// A teacher's folder, looked through: profiles, scores, plans made.
#pragma once

#include "vowelway/report/studio_report.hpp"

#include <filesystem>
#include <string>
#include <vector>

namespace vowelway::cli {

/// The profiles and the scores in a folder and its folders, in the order of their names; hidden ones and the
/// plans made are passed over.
struct StudioFiles {
    std::vector<std::string> profiles, scores, plans;
};
/// Throws InputError where the folder is none, or has neither a singer nor a song.
StudioFiles studio_files(std::filesystem::path const& folder);
/// When a file was last changed.
std::filesystem::file_time_type changed(std::string const& file);
/// SONG--SINGER.pdf: what `studio plans` calls a plan.
std::string plan_name(std::string const& score, std::string const& profile);

/// Reads them all; what cannot be read is told there. Throws as studio_files does.
report::Studio read_studio(std::filesystem::path const& folder, std::string const& today);

} // namespace vowelway::cli
