// SPDX-License-Identifier: MIT
// French words sung into one another. Private to the layer.
#pragma once

#include "vowelway/core/sung_text.hpp"

namespace vowelway::diction {

/// Whether a French word begins with a vowel that others are joined to: "amour", "homme", not "haut".
bool takes_liaison(std::string_view written, std::string_view ipa);

/// Whether a stop stands between this word and the next.
bool parted(std::string_view written);

/// Adds the consonant that carries over from a word to the next one, where singers always make it, and marks
/// both as joined. Source: T. Grubb, Singing in French (1979), from memory: after articles, pronouns,
/// possessives, numbers, short prepositions and adverbs, forms of be and have, endings -ait, -aient, -ont.
void join_french(TextWord& word, TextWord const& next);

} // namespace vowelway::diction
