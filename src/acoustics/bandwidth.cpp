// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/bandwidth.hpp"

#include "core/closed_glottis.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::acoustics {

namespace {

double hawks_miller(double f, double fo) {
    constexpr double low[] = {165.327516,     -6.73636734e-1, 1.80874446e-3,
                              -4.52201682e-6, 7.49514000e-9,  -4.70219241e-12};
    constexpr double high[] = {15.8146139,    8.10159009e-2,   -9.79728215e-5,
                               5.28725064e-8, -1.07099364e-11, 7.91528509e-16};
    auto const& c = f < 500 ? low : high;
    double b = 0;
    for (int k = 5; k >= 0; --k) b = b * f + c[k];
    return b * (1 + 0.25 * (std::clamp(fo, 88.0, 264.0) - 132) / 88);
}

double swept_tone(double f) {
    if (f >= 500) return 50 * (1 + f * f / 6e6);
    double const x = std::max(f, 250.0) - 500;
    return 52.08 * (1 + x * x / 1e5);
}

} // namespace

Frequency bandwidth(BandwidthModel model, Frequency centre, Pitch fo) {
    double const f = std::clamp(centre.value(), 100.0, 5000.0);
    switch (model) {
    case BandwidthModel::hawks_miller:
        return hertz(hawks_miller(f, fo.frequency().value()));
    case BandwidthModel::swept_tone:
        return hertz(swept_tone(f));
    case BandwidthModel::closed_glottis:
        break;
    }
    return closed_glottis_bandwidth(hertz(f));
}

Frequency radiation_bandwidth(Frequency centre, Area lips, Length tract) {
    double const f = centre.value();
    return hertz(f * f * lips.value() * 1.5 / (tract.value() * 354));
}

} // namespace vowelway::acoustics
