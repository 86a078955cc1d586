// SPDX-License-Identifier: MIT
// A lesson on a song, from its plan: the song in three lines, its phrases by difficulty, in which order to
// practise them, and an exercise for each vowel that matters, at this singer's own turning points. How it is
// ranked and which exercise is taken is common practice, no source; the sizes are our judgement.
// Threads: plain values; the function keeps nothing between calls.
#pragma once

#include "vowelway/plan/plan.hpp"

#include <array>
#include <cstddef>
#include <string>
#include <vector>

namespace vowelway::plan {

/// What is sung in one breath.
struct LessonPhrase {
    std::size_t from = 0, to = 0;   ///< notes [from, to) of the passage
    std::string bars;               ///< "bars 5 and 6"
    std::string words;              ///< as sung: "nel periglio"
    double difficulty = 0;          ///< > 0; what there is to do, and how long and high it is
    std::string why;                ///< "jaw wide on G5; 2 changes"
    std::vector<std::string> again; ///< bars where the same phrase comes back
};

/// A few notes on one vowel.
struct Exercise {
    enum class Kind {
        slide, ///< two notes, slowly from one to the other and back: the vowel turns over between them
        scale  ///< five notes up and down: on the upper ones the vowel is changed
    };
    Kind kind = Kind::slide;
    std::size_t vowel = 0;           ///< index in Plan::vowels
    std::vector<SpelledPitch> notes; ///< in the order sung
    std::vector<std::string> sung;   ///< the vowel each begins, IPA; empty where the one before goes on
    std::string how;                 ///< what to do
    std::string listen;              ///< what to listen for
};

struct Lesson {
    Plan plan;                           ///< the lesson's own
    std::array<std::string, 3> in_brief; ///< compass and where it lies; what to do; the hardest place
    std::vector<LessonPhrase> phrases;   ///< hardest first, six at most, only such as have something to do
    std::vector<std::size_t> order;      ///< of practice: indices in `phrases`
    std::vector<Exercise> exercises;     ///< four at most
    std::vector<std::string> cautions;   ///< beside the caution that every output carries
};

/// Throws InputError for a plan without notes.
Lesson lesson_of(Plan plan);

} // namespace vowelway::plan
