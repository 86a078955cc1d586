// SPDX-License-Identifier: MIT
// Noise through a tract, against a solver written apart from it.
#include "support/tract_synthesis.hpp"
#include "vowelway/acoustics/whispered.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

using namespace vowelway;
using namespace vowelway::acoustics;

namespace {

// An invented tract: narrow above the glottis, wide behind, narrow in front.
std::vector<double> const areas{0.5, 0.8, 3, 4, 4.5, 4, 3, 2, 1.2, 0.8, 0.9, 1.5, 2, 2.5, 2, 1.5, 1.2};

AreaFunction tract() {
    AreaFunction out;
    for (double area : areas) out.push_back({centimetres(1), square_centimetres(area)});
    return out;
}

double level(double hz, AcousticOhms glottis, NoisePlace place = {}) {
    return whispered_level(tract(), hertz(hz), glottis, place).value;
}

} // namespace

TEST_CASE(
    "behind a shut glottis the noise is what the flow at the lips makes of it (Sondhi & Schroeter 1987)") {
    auto const apart = [](double hz) {
        return 20 * std::log10(hz * std::abs(probe_synthesis::lip_flow(areas, 1, hz)));
    };
    double const there = level(1000, {1e9}) - apart(1000);
    for (double hz = 100; hz < 6000; hz += 55) {
        CAPTURE(hz);
        CHECK(std::abs(level(hz, {1e9}) - apart(hz) - there) < 0.05);
    }
}

TEST_CASE("an open glottis widens the peaks and leaves them near the resonances") {
    auto const found = resonances(tract(), TractLoss::closed_glottis, hertz(3500));
    for (std::size_t k = 0; k < 3; ++k) {
        double const hz = in_hertz(found.at(k).centre);
        double best = 0, peak = -1e9;
        for (double f = 0.8 * hz; f < 1.2 * hz; f += 2)
            if (double const l = level(f, whispering_glottis); l > peak) peak = l, best = f;
        CHECK(std::abs(best / hz - 1) < 0.03);
        double const side = 0.5 * (level(hz - 150, {1e9}) + level(hz + 150, {1e9}));
        double const open_side =
            0.5 * (level(hz - 150, whispering_glottis) + level(hz + 150, whispering_glottis));
        CHECK(peak - open_side < level(hz, {1e9}) - side);
    }
}

// Fant 1960 and Stevens 1998 (from memory): noise made behind a narrow place sounds with the cavity behind
// it, a tube shut at both ends, c/2l; noise made in front of it with the cavity in front, c/4(l + 0.82 r).
TEST_CASE("where the noise is made decides which cavity is heard") {
    std::vector<double> narrow(12, 3.0);
    narrow.push_back(0.05);
    narrow.insert(narrow.end(), 4, 3.0);
    AreaFunction shape;
    for (double area : narrow) shape.push_back({centimetres(1), square_centimetres(area)});
    auto const loudest = [&](NoisePlace place) {
        double best = 0, peak = -1e9;
        for (double f = 200; f < 3200; f += 5)
            if (double const l = whispered_level(shape, hertz(f), whispering_glottis, place).value; l > peak)
                peak = l, best = f;
        return best;
    };
    CHECK(loudest({}) == doctest::Approx(35000.0 / 2 / 12).epsilon(0.03));
    CHECK(loudest(13) == doctest::Approx(35000 / 4 / (4 + 0.82 * std::sqrt(3 / 3.14159))).epsilon(0.04));
    CHECK_THROWS_AS(level(500, whispering_glottis, 17), std::out_of_range);
}
