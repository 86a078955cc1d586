// SPDX-License-Identifier: MIT
// The fields of a passage written by hand, each from its node. All throw InputError. Private to the library.
#pragma once

#include "vowelway/core/passage.hpp"
#include "yaml/tree.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace vowelway::io {

inline constexpr double longest_note = 600; ///< seconds; past it a unit was mistaken

double bounded_number(yaml::Node const& node, std::string_view what, double least, double most);
/// "1 s", "500 ms", "2 beats", as quarter notes at the tempo. A beat is the time signature's lower number.
double length_of(yaml::Node const& node, double per_minute, int beat_type);
/// "mi-", "-a", "sol": hyphens tell the place in the word; ‿ _ or a blank joins two syllables on one note.
std::vector<Syllable> syllables_of(std::string_view text);
double dynamic_of(yaml::Node const& node);
TimeSignature time_of(yaml::Node const& node);
/// "D major", "f# minor", "Eb".
KeySignature key_of(yaml::Node const& node);
std::string language_of(yaml::Node const& node);
/// true or false.
bool hummed_of(yaml::Node const& node);

} // namespace vowelway::io
