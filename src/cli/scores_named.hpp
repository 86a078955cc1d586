// SPDX-License-Identifier: MIT
// Several songs on one command line.
#pragma once

#include <string>
#include <vector>

namespace vowelway::cli {

/// Of each name: a folder gives the scores and YAML passages in it and in its folders, in the order of their
/// names; anything else stays. Throws InputError for a folder without any.
std::vector<std::string> scores_named(std::vector<std::string> const& names);

/// A score by its ending, or a YAML file that has notes at its head rather than a singer.
bool looks_like_score(std::string const& path);

} // namespace vowelway::cli
