// SPDX-License-Identifier: MIT
// Where sections of a choir begin the same syllable together, and one vowel for it. Private to the layer.
#pragma once

#include "plan/section_voice.hpp"
#include "vowelway/plan/choir.hpp"

#include <vector>

namespace vowelway::plan {

/// Every syllable that two parts or more begin at one time on the same vowel, in the order sung; with the
/// notes, not yet with what is heard.
std::vector<SharedWord> shared_words(std::vector<ChoirPart> const& parts);

/// The distance of two sections' heard vowels, each seen from its own spoken one.
Bark apart(HeardOffset const& a, HeardOffset const& b);

/// Fills in what is heard, who leaves, and where the vowels part the common vowel; `voices` go with the
/// parts.
void listen(SharedWord& word, std::vector<SectionVoice> const& voices);

/// "the soprano has turned over, the others have not".
std::string why_apart(SharedWord const& word, std::vector<ChoirPart> const& parts);

/// Partials that coincide and rub in a chord of this word.
Chord chord_of(SharedWord const& word, std::size_t index, std::vector<ChoirPart> const& parts);

} // namespace vowelway::plan
