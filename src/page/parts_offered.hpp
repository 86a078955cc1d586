// SPDX-License-Identifier: MIT
// What of a score can be chosen: its parts with words, and how many verses each has.
#pragma once

#include "page/request.hpp"

#include <string_view>

namespace vowelway::page {

/// [{"part": "1", "name", "verses"}] from the top of the page down; all parts where none has words, with 0
/// verses; empty for a passage in YAML. Throws InputError.
Json parts_offered(std::string_view score, std::string const& file);

} // namespace vowelway::page
