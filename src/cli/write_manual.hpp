// SPDX-License-Identifier: MIT
// For the build: the manual pages and the completions as files.
#pragma once

#include <filesystem>

namespace vowelway::cli {
/// Writes "vowelway.1", "vowelway-plan.1", .., "vowelway.bash", "_vowelway" and "vowelway.fish" into the
/// folder, which is made if it is missing. Throws InputError when one cannot be written.
void write_manual(std::filesystem::path const& folder);
} // namespace vowelway::cli
