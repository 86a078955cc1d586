// SPDX-License-Identifier: MIT
#include "core/interval.hpp"

#include <cmath>
#include <string_view>

namespace vowelway {

namespace {
constexpr std::string_view line_of_fifths = "FCGDAEB"; // F is -1

int floor_div(int a, int b) { return a >= 0 ? a / b : -((-a + b - 1) / b); }
} // namespace

Interval interval_for_key(double semitones, int fifths) {
    int const whole = static_cast<int>(std::lround(semitones));
    int const residue = ((7 * whole) % 12 + 12) % 12; // fifths modulo an enharmonic circle of twelve
    int best = residue;
    for (int candidate : {residue, residue - 12})
        if (std::abs(fifths + candidate) < std::abs(fifths + best)) best = candidate;
    return {semitones, whole % 12 == 0 ? 0 : best};
}

SpelledPitch moved(SpelledPitch const& pitch, Interval by) {
    if (by == Interval{}) return pitch;
    auto const letter = line_of_fifths.find(pitch.step);
    int const whole = static_cast<int>(std::floor(pitch.alter));
    int const place = static_cast<int>(letter) - 1 + 7 * whole + by.fifths; // C 0
    SpelledPitch out;
    int const alter = floor_div(place + 1, 7);
    out.step = line_of_fifths[static_cast<std::size_t>(place + 1 - 7 * alter)];
    double const target = pitch.key_number() + by.semitones;
    out.octave = 0;
    out.alter = alter;
    out.octave = static_cast<int>(std::lround((target - out.key_number()) / 12));
    out.alter = 0;
    out.alter = target - out.key_number();
    if (std::abs(out.alter) > 2) return transposed(pitch, by.semitones);
    return out;
}

} // namespace vowelway
