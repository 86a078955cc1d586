// SPDX-License-Identifier: MIT
// A line cut into phrases.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/passage.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace vowelway::plan {

/// Notes [from, to) that are sung in one breath.
struct PhraseNotes {
    std::size_t from = 0, to = 0;
    std::size_t peak = 0; ///< its highest note; the longest of equal ones
};

/// A rest of a quarter of a second ends a phrase (common practice, no source: less is hardly a breath).
std::vector<PhraseNotes> phrases_of(Passage const& passage);

/// "nel periglio": its words, whole.
std::string words_of(Passage const& passage, PhraseNotes const& phrase);
/// "bar 5", "bars 5 to 6"
std::string bars_of(Passage const& passage, PhraseNotes const& phrase);

} // namespace vowelway::plan
