// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/whispered.hpp"

#include "acoustics/tube.hpp"

#include <cmath>
#include <numbers>
#include <stdexcept>

namespace vowelway::acoustics {

Decibels whispered_level(AreaFunction const& tract, Frequency f, AcousticOhms glottis, NoisePlace place) {
    auto const t = tube::checked(tract, TractLoss::closed_glottis);
    auto const joint = place.value_or(0);
    if (joint >= t.size()) throw std::out_of_range("whispered_level: no such joint");
    tube::Complex const s{0, 2 * std::numbers::pi * in_hertz(f)};
    auto const behind = tube::two_port(t, s, 0, joint), before = tube::two_port(t, s, joint, t.size());
    // Looking back from the joint: P = -Z U at the glottis, carried through the sections behind.
    double const gap = glottis.value;
    auto const back = (behind.a * gap - behind.b) / (behind.d - behind.c * gap);
    auto const load = tube::radiation_load(t, s);
    auto const through = before.a - before.c * load;           // U at the joint over U at the lips
    auto const ahead = (load * before.d - before.b) / through; // what the source feels before it
    return {20 * std::log10(std::abs(s / ((back + ahead) * through)))};
}

} // namespace vowelway::acoustics
