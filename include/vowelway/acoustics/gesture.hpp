// SPDX-License-Identifier: MIT
// What a singer does to the tract, in degrees a singer can feel.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::acoustics {

enum class GesturePart {
    jaw,
    lip_opening,
    lip_protrusion,
    tongue_height,
    tongue_advancement,
    larynx,
    pharynx
};
inline constexpr std::array all_gesture_parts{
    GesturePart::jaw,           GesturePart::lip_opening,        GesturePart::lip_protrusion,
    GesturePart::tongue_height, GesturePart::tongue_advancement, GesturePart::larynx,
    GesturePart::pharynx};
std::string_view to_string(GesturePart part);

/// One thing the singer does.
struct Gesture {
    using Part = GesturePart;
    Part part = Part::jaw;
    double amount = 0;   ///< -1 .. +1 of the comfortable travel; + opens, protrudes, raises, advances, widens
    std::string words;   ///< "open the jaw a little"
    bool rounded = true; ///< of a vowel with round lips, which are rounded less; others widen

    /// How much: 0 hardly, 1 a little, 2, 3 a good deal; an index into words.
    std::size_t degree() const;
    /// Lips that are not round let go sideways: other words than for less of the part.
    bool lets_lips_widen() const { return part == Part::lip_protrusion && amount < 0 && !rounded; }
};

/// All parts at once, indexed by GesturePart; zero is the vowel's own shape.
using GestureVector = std::array<double, 7>;

/// Of its travel: less is not worth saying (our choice).
inline constexpr double least_told = 0.12;

/// The gestures of a vector that are worth saying, largest first, with their words. What moves less than
/// `least` of its travel is left out, however small the rest. `rounded`: whether the vowel they leave has
/// round lips. No words ask for spread lips: to a singer that is a fault (common practice, no source).
std::vector<Gesture> describe(GestureVector const& vector, bool rounded = true, double least = least_told);

} // namespace vowelway::acoustics
