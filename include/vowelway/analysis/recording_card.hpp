// SPDX-License-Identifier: MIT
// What a student is to do when recording vowels, as plain data: report writes it as text, chart as a page.
// Threads: plain values; the function keeps nothing between calls.
#pragma once

#include "vowelway/core/vowel.hpp"

#include <string>
#include <vector>

namespace vowelway::analysis {

struct RecordingCard {
    /// What is to be done at one time, in this order.
    struct Part {
        std::string heading;
        std::vector<std::string> points; ///< whole sentences
    };
    std::string title;
    std::string vowels; ///< which, in which order and how many times: to be seen from afar
    std::vector<Part> parts;
};

/// How to record these vowels, said `repeat` times (0: twice), as a whisper.
RecordingCard recording_card(std::vector<Vowel> const& vowels, int repeat);

} // namespace vowelway::analysis
