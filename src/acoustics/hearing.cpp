// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/hearing.hpp"

#include "vowelway/acoustics/scales.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace vowelway {

namespace {

constexpr double integration = 3.25; // Bark to either side
constexpr double front_weight = 0.5; // of a Bark of the upper peak

// 1 in the middle, 0 from `integration` on; near a bell with a deviation of 1.2 Bark, at the cost of a product.
double nearness(double bark_off) {
    double const t = bark_off / integration;
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
    double const high = 1 - rise((gap.value - 2.75) / 1.0);
    double const speech = 1 - rise((fo.frequency().value() - 300) / 300);
    return {high * speech};
}

HeardPlace heard_place(NoteSpectrum const& note, ResonanceSet const& shape, std::span<double const> powers) {
    auto const places = note.places();
    double const z1 = bark(shape.r1()).value, z2 = bark(shape.r2()).value;
    double const fundamental = places[0];
    double first = 0, first_sum = 0, upper = 0, upper_sum = 0;
    double const middle = (z1 + z2) / 2;
    for (std::size_t n = 0; n < places.size(); ++n) {
        double const z = places[n];
        if (double const w = powers[n] * nearness(z - z1); w > 0) {
            first += w * z;
            first_sum += w;
        }
        if (z > middle - 0.75)
            if (double const near = nearness(z - z2); near > 0) {
                double const w = std::sqrt(powers[n]) * static_cast<double>(n + 1) * near * rise((z - middle) / 1.5 + 0.5);
                upper += w * z;
                upper_sum += w;
            }
        if (z > z2 + integration) break;
    }
    double const peak = first_sum > 0 ? first / first_sum : std::max(fundamental, z1);
    double second = z2;
    if (upper_sum > 0) second = upper / upper_sum;
    else if (fundamental > z2) second = fundamental; // nothing lies below fo
    return {Bark{peak} - high_vowel_shift(Bark{peak - fundamental}, note.pitch()), {std::max(second, peak)}};
}

HeardPlace heard_place(NoteSpectrum const& note, ResonanceSet const& shape) {
    std::array<double, NoteSpectrum::most_harmonics> powers;
    note.powers(shape, powers);
    return heard_place(note, shape, powers);
}

Pitch speaking_pitch(Frequency quarter) {
    // Groups' mean F4/7 and fo in Hillenbrand et al. 1995: 506 Hz and 131 Hz, 595 Hz and 220 Hz, 614 Hz and 238 Hz.
    return Pitch(hertz(std::clamp(131 + (quarter.value() - 506), 80.0, 280.0)));
}

} // namespace vowelway
