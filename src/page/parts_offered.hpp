// SPDX-License-Identifier: MIT
// What of a score can be chosen: the lines that are sung, and how many verses each has.
#pragma once

#include "page/request.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <string>
#include <string_view>

namespace vowelway::page {

/// [{"part": "1", "name", "verses"}] from the top of the page down: every line that is sung, "1.2" the second
/// of a part, "1 low" the lower of two written as chords; all parts where none has words, with 0 verses;
/// empty for a passage in YAML. Throws InputError.
Json parts_offered(std::string_view score, std::string const& file);

/// The wish of a request: a line as it was offered, or a part's name.
void choose_part(io::ScoreOptions& options, std::string const& wish);

} // namespace vowelway::page
