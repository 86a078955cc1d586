// SPDX-License-Identifier: MIT
// What a student is to do, to be printed and taken along.
// Threads: plain values; the function keeps nothing between calls.
#pragma once

#include "vowelway/core/vowel.hpp"

#include <string>
#include <vector>

namespace vowelway::report {

/// How to record these vowels, said `repeat` times (0: twice), as a whisper. Lines of at most 78 letters.
std::string recording_card(std::vector<Vowel> const& vowels, int repeat);

} // namespace vowelway::report
