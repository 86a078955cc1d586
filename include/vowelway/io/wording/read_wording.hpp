// SPDX-License-Identifier: MIT
// Tables of what a reader is told in other languages, from YAML; the format is told in docs/formats.md.
#pragma once

#include "vowelway/core/wording.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::io {

/// One that comes with the program by its code ("de"), "en" for English, else the file of that name.
/// Throws InputError that lists the codes when it is none of them.
Wording find_wording(std::string const& code_or_path);

/// "en", or one that comes with the program; no file is looked for.
std::optional<Wording> built_in_wording(std::string const& code);

/// The codes of the languages that come with the program, "en" first.
std::vector<std::string> wording_codes();

/// Strict: throws InputError with file, line, column and remedy for unknown keys and for a sentence whose
/// places {0}, {1} .. are not those of the English one. `file` is the name that messages give.
Wording parse_wording(std::string const& text, std::string const& file);

} // namespace vowelway::io
