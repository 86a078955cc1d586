// SPDX-License-Identifier: MIT
// Techniques from YAML; the format is told in docs/strategy.md.
#pragma once

#include "vowelway/core/technique.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::io {

/// A technique that comes with the program by its name ("classical"), else the file of that name.
/// Throws InputError that lists the names when it is neither.
Technique find_technique(std::string const& name_or_path);

/// One that comes with the program, by its name; no file is looked for.
std::optional<Technique> built_in_technique(std::string const& name);

/// Names of the techniques that come with the program.
std::vector<std::string> technique_names();

/// Strict: throws InputError with file, line, column and remedy for unknown keys and impossible values. What
/// a file leaves out is as in `Technique{}`. `file` is the name that messages give.
Technique parse_technique(std::string const& text, std::string const& file);

} // namespace vowelway::io
