// SPDX-License-Identifier: MIT
// IPA that a person wrote under a note. Private to the layer.
#pragma once

#include "vowelway/core/passage.hpp"

#include <optional>
#include <string_view>

namespace vowelway::diction {

/// "/a/", "[a]", "a", "mja", "aʊ̯", "aɪ": a syllable with or without its consonants. The first vowel that is
/// not marked as a glide is held; j and w before it pass into it, what follows passes out of it. Nothing when
/// there is no vowel.
std::optional<SungVowel> read_typed(std::string_view text);

} // namespace vowelway::diction
