// SPDX-License-Identifier: MIT
// German as it was written before 1901 and before 1996. Private to the layer.
#pragma once

#include <string>

namespace vowelway::diction {

/// The word as it is written today, in small letters, for the synthesiser to read: "todt" tot, "bey" bei,
/// "athem" atem, "muß" muss, "in's" ins. Source: Duden, Rechtschreibung (2020), from memory.
std::string modern_spelling(std::string word);

} // namespace vowelway::diction
