// SPDX-License-Identifier: MIT
// A song's words as a poem with the sounds of lyric diction. Rules and what they leave out: docs/diction.md.
// Threads: as sing_words.hpp.
#pragma once

#include "vowelway/core/sung_text.hpp"
#include "vowelway/diction/sing_words.hpp"

#include <string_view>

namespace vowelway::diction {

/// The words of a passage. Verse lines are found from capital letters, punctuation, rests and rhyme; a line
/// sung again at once stands once. The language is the passage's own, which set_vowels has set, unless the
/// options name one.
SungText sung_text(Passage const& passage, DictionOptions const& options = {});

/// A text whose lines are given; empty lines part stanzas. Bounds and errors as transcribe().
SungText sung_text(std::string_view text, Language language, DictionOptions const& options = {});

} // namespace vowelway::diction
