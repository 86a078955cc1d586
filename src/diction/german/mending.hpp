// SPDX-License-Identifier: MIT
// The synthesiser's vowels as the stage sings them, by the letters around them. Private to the layer.
#pragma once

#include "diction/words/sounds.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace vowelway::diction {

/// Mends the nuclei of a word that is no compound. `spelled`: one byte for each letter, ä ö ü ß as A O U S.
void mend_german(std::vector<Nucleus>& nuclei, std::string const& spelled);

} // namespace vowelway::diction
