// SPDX-License-Identifier: MIT
// The vowel letters a singer reads in a language. Private to the layer.
#pragma once

#include <span>
#include <string_view>

namespace vowelway::plan {

/// The letters of lyric diction for a language ("it", "de", ..); those that all of them share, with the
/// German ones, for any other. A heard or wanted vowel is named by these and by those that are sung.
/// Common practice, no source.
std::span<char32_t const> signs_of(std::string_view language);

} // namespace vowelway::plan
