// SPDX-License-Identifier: MIT
// The vowels of a singer recorded from the microphone of this machine, one at a time.
#pragma once

#include "vowelway/core/vowel.hpp"

#include <string>
#include <vector>

namespace vowelway::cli {

struct RecordOptions {
    std::string file;               ///< .wav or .flac, to be written
    std::string device = "default"; ///< a name of ALSA
    int repeat = 1;                 ///< times through the list
};

/// Says the cautions, listens to the room, then asks for one vowel after the other, shows level and noise,
/// and asks again where it was not steady, too soft, too short or clipped (three times at most). Writes them
/// with pauses between. Throws InputError where there is no microphone, or a vowel did not succeed.
void record_vowels(std::vector<Vowel> const& vowels, RecordOptions const& options);

} // namespace vowelway::cli
