// SPDX-License-Identifier: MIT
// What is said of a word that sections of a choir sing together; every output says the same.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/choir.hpp"

#include <string>

namespace vowelway::plan {

/// "Soprano, Tenor: lips a little spread /o/; Alto: tongue a little lower /ʊ/": whom to ask for what, alike
/// ones together; that no vowel is reached by all; empty where the vowels match.
std::string ask_of(Choir const& choir, SharedWord const& word);

/// "3, 4, 7": the bars of the word and of the same chord on the same vowel, in the order sung, each once.
std::string bars_of(Choir const& choir, SharedWord const& word);

/// The same with "bar" or "bars" before.
std::string named_bars_of(Choir const& choir, SharedWord const& word);

/// What the partials of a chord tell the director, a sentence each; empty: nothing to say.
struct ChordWords {
    std::string tune;        ///< "Tune on D5: Alto 2fo on its fR1, Bass 3fo.": the loudest that coincide
    std::string rub;         ///< "These rub: ..": strong partials close by, one on a resonance
    std::string unsettled;   ///< whose fo or 2fo lies on fR1: the vowel tips with a small change
    std::string str() const; ///< all that is said, a blank between
};
/// Empty for a word of fewer than three sections.
ChordWords chord_words_of(Choir const& choir, SharedWord const& word);

} // namespace vowelway::plan
