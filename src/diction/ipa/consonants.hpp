// SPDX-License-Identifier: MIT
// The consonants of a word about its nuclei. Private to the layer.
#pragma once

#include "diction/syllables/singing.hpp"

#include <string>
#include <vector>

namespace vowelway::diction {

/// Consonants before the first nucleus, between the nuclei, and after the last: one more than nuclei, each a
/// list of IPA consonants in order.
using Clusters = std::vector<std::vector<std::string>>;

/// By the spelling: Italian, Latin, Spanish.
Clusters spelled_consonants(Reading const& reading, Language language);

/// By a table of letters: Latin in German use, Hebrew and Church Slavonic in Latin letters.
Clusters tabled_consonants(Reading const& reading, Language language);

/// From a transcription with its vowels, matched to the nuclei in order.
Clusters said_consonants(std::vector<Phone> const& said, Reading const& reading, Language language);

/// Consonants of the language, in whichever way it has them; as sung (r is never swallowed).
Clusters consonants(Reading const& reading, Language language);

} // namespace vowelway::diction
