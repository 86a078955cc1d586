// SPDX-License-Identifier: MIT
// What a page plays: a vowel, a note or a line of the plan, as samples.
#pragma once

#include "page/request.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace vowelway::page {

/// Makes the sound that request["sound"] asks for ("vowel", "note" or "line"), at the loudness the program
/// gives it. The samples, one channel at sound::sample_rate, stand in `samples()` until the next call; the
/// answer is the list of what is heard when, and of the notes of a line. Throws InputError.
std::string heard(Json const& request, std::string_view score);
std::vector<float> const& samples();

} // namespace vowelway::page
