// SPDX-License-Identifier: MIT
// A transposition in words. Private to the library.
#pragma once

#include <string>

namespace vowelway {

/// "an octave lower", "2 octaves higher", "1 semitone higher", "2.5 semitones lower"; not for 0.
std::string interval_in_words(double semitones);

} // namespace vowelway
