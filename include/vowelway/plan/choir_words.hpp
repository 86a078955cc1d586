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

} // namespace vowelway::plan
