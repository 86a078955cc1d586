// SPDX-License-Identifier: MIT
// One thing that a teacher would say of a session.
// Threads: plain values; the function keeps nothing between calls.
#pragma once

#include <string>
#include <string_view>

namespace vowelway::analysis {

/// One thing to say. `size` with its deviation `sd` decides: it is said when it is more than two deviations
/// and more than what a listener notices (our choice of limits, each at its kind).
struct LessonPoint {
    enum class Kind {
        all_higher,     ///< F1, F2 and F3 all up, by 2 % at least: larynx high, lips spread, noise too far in
                        ///< front
        all_lower,      ///< all down, by 2 % at least: larynx lower, lips rounder
        tongue_back,    ///< F2 down by 3 % at least against F1 and F3
        dull_noise,     ///< the noise lacks height: made too far back
        thin_noise,     ///< the noise lacks depth: made too far in front
        noise_in_front, ///< most whispers lack what a tract shut behind their noise takes up; share of them
        wider_apart,    ///< the vowels farther from their own centre, by 5 % at least: over-articulated
        nearer,         ///< the vowels nearer to their centre, by 5 % at least
        repeats,        ///< how well repeats agree in this session, cents
        as_last_time,   ///< nothing has moved: the median distance from the last time, cents
        no_reference    ///< no earlier probe of this kind to compare with
    };
    Kind kind = Kind::repeats;
    double size = 0, sd = 0; ///< per cent, decibels, cents or a share
    std::string says, tries; ///< `tries` is empty where nothing is to be done
};
std::string_view to_string(LessonPoint::Kind kind);

} // namespace vowelway::analysis
