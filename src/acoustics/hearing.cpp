// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/hearing.hpp"

#include "vowelway/acoustics/scales.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace vowelway::acoustics {

namespace {

// How far below and above fR1 a harmonic still takes part in the first peak, in Bark. Upward spread lets the
// ear gather a little more from below.
constexpr double reach_below = 3.6, reach_above = 3.2;
constexpr double integration = 3.25; // around fR2, Bark to either side

// What a Bark of fo above the low voice closes the vowel, and between which places of fo against fR1, in
// Bark, that fades out.
constexpr double closing = 0.2, fading_from = -4.2, fading_to = 2.8;

// 1 in the middle, 0 from `reach` on; near a bell, at the cost of a product.
double nearness(double bark_off, double reach) {
    double const t = bark_off / reach;
    double const s = 1 - t * t;
    return s > 0 ? s * s : 0;
}

// 0 below 0, 1 above 1, smooth between.
double rise(double t) {
    t = std::clamp(t, 0.0, 1.0);
    return t * t * (3 - 2 * t);
}

} // namespace

Bark distance(HeardPlace const& a, HeardPlace const& b) {
    double const open = (a.openness - b.openness).value, front = front_weight * (a.front - b.front).value;
    return {std::sqrt(open * open + front * front)};
}

Bark high_vowel_shift(Bark gap, Pitch fo) {
    double const high = 0.2 * (1 - rise((gap.value - 2.75) / 1.0));
    double const speech = 1 - rise((fo.frequency().value() - 520) / 100);
    return {high * speech};
}

Bark pitch_shift(Bark fo, Bark low_voice, Bark r1) {
    double const fading = 1 - rise((fo.value - r1.value - fading_from) / (fading_to - fading_from));
    return {closing * fading * std::max(0.0, fo.value - low_voice.value)};
}

HeardPlace heard_place(NoteSpectrum const& note, ResonanceSet const& shape, std::span<double const> powers) {
    auto const places = note.places();
    double const z1 = bark(shape.r1()).value, z2 = bark(shape.r2()).value, middle = (z1 + z2) / 2;
    double const fundamental = places[0];
    double first = 0, first_sum = 0, upper = 0, upper_sum = 0;
    for (std::size_t n = 0; n < places.size() && places[n] < z2 + integration; ++n) {
        double const z = places[n], off = z - z1;
        double const near_first = nearness(off, off < 0 ? reach_below : reach_above);
        double const near_upper = nearness(z - z2, integration);
        if (near_first == 0 && near_upper == 0) continue;
        double const amplitude = std::sqrt(powers[n]), loudness = std::sqrt(amplitude);
        first += loudness * near_first * z;
        first_sum += loudness * near_first;
        double const in_upper =
            amplitude * static_cast<double>(n + 1) * near_upper * rise((z - middle) / 1.5 + 0.5);
        upper += in_upper * z;
        upper_sum += in_upper;
    }
    double const peak = first_sum > 0 ? first / first_sum : std::max(fundamental, z1);
    double second = z2;
    if (upper_sum > 0)
        second = upper / upper_sum;
    else if (fundamental > z2)
        second = fundamental; // nothing lies below fo
    auto const lowered = high_vowel_shift(Bark{peak - fundamental}, note.pitch()) +
                         pitch_shift({fundamental}, note.low_voice(), {z1});
    return {Bark{peak} - lowered, {std::max(second, peak)}};
}

HeardPlace heard_place(NoteSpectrum const& note, ResonanceSet const& shape) {
    std::array<double, NoteSpectrum::most_harmonics> powers;
    note.powers(shape, powers);
    return heard_place(note, shape, powers);
}

Pitch low_voice(Frequency quarter) { return speaking_pitch(quarter) - semitones(6); }

Pitch speaking_pitch(Frequency quarter) {
    // Groups' mean F4/7 and fo in Hillenbrand et al. 1995: 506 Hz and 131 Hz, 595 Hz and 220 Hz, 614 Hz and
    // 238 Hz.
    return Pitch(hertz(std::clamp(131 + (quarter.value() - 506), 80.0, 280.0)));
}

} // namespace vowelway::acoustics
