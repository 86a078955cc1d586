// SPDX-License-Identifier: MIT
// How deep and how large the tree of a JSON text would be, before it is built. Private to the folder.
#pragma once

#include <string>
#include <string_view>

namespace vowelway::io {

/// Throws InputError for a text past deepest_plan or most_plan_values (read_targets.hpp). A text that is no
/// JSON is left to the parser.
void require_json_bounds(std::string_view json, std::string const& file);

} // namespace vowelway::io
