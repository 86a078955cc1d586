// SPDX-License-Identifier: MIT
// Themes of the charts from YAML; the format is told in docs/formats.md.
#pragma once

#include "vowelway/core/theme.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::io {

/// A theme that comes with the program by its name ("large"), else the file of that name.
/// Throws InputError that lists the names when it is neither.
Theme find_theme(std::string const& name_or_path);

/// One that comes with the program, by its name; no file is looked for.
std::optional<Theme> built_in_theme(std::string const& name);

/// Names of the themes that come with the program.
std::vector<std::string> theme_names();

/// Strict: throws InputError with file, line, column and remedy for unknown keys, what is no colour, and text
/// that cannot be read on the paper. What a file leaves out is as in `Theme{}`. `file` is the name that
/// messages give. Whether the fonts are installed is found when a chart is drawn.
Theme parse_theme(std::string const& text, std::string const& file);

} // namespace vowelway::io
