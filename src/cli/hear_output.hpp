// SPDX-License-Identifier: MIT
// What is heard, as a list and as files.
#pragma once

#include "cli/outputs.hpp"
#include "vowelway/io/audio/midi.hpp"
#include "vowelway/sound/programme.hpp"

#include <string>
#include <vector>

namespace vowelway::cli {

struct GuideLine {
    std::string title;
    std::vector<io::GuideNote> notes; ///< empty: there is no line
    Duration quarter = seconds(0.5);
};

/// Plays the programme into every output, at the loudness of sound::balance; the table says what is heard
/// when.
void write_sound(sound::Programme const& programme, GuideLine const& guide, Outputs const& outputs);

} // namespace vowelway::cli
