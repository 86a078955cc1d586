// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/scales.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::acoustics;
using doctest::Approx;

namespace {
struct At {
    double hz, value;
};
} // namespace

TEST_CASE("critical-band rate follows Traunmüller 1990, J. Acoust. Soc. Am. 88, 97") {
    // 26.81/(1 + 1960/f) - 0.53 with both end corrections, worked by hand to five decimals.
    for (auto [hz, z] : {At{100, 0.95574},
                         {150, 1.46954},
                         {200, 1.95955},
                         {270, 2.71605},
                         {500, 4.91919},
                         {700, 6.52526},
                         {1000, 8.52743},
                         {1500, 11.09283},
                         {2500, 14.49803},
                         {4000, 17.46329},
                         {8000, 21.20305},
                         {10000, 22.27939}}) {
        CAPTURE(hz);
        CHECK(bark(hertz(hz)).value == Approx(z).epsilon(1e-5));
        CHECK(frequency(Bark{z}).value() == Approx(hz).epsilon(1e-5));
    }
    CHECK(frequency(Bark{8.5}).value() == Approx(995.433).epsilon(1e-6));
    CHECK(critical_bandwidth(bark(1000_Hz)).value() == Approx(166.87).epsilon(1e-4));
}

TEST_CASE("critical-band rate agrees with the bands of Zwicker 1961 within 0.1 Bark from 300 Hz") {
    // Zwicker 1961, J. Acoust. Soc. Am. 33, 248 (from memory): upper edges of critical bands 3..20.
    // Traunmüller claims 0.05 Bark against the underlying curve between 0.2 and 6.7 kHz; edges are rounded.
    double const edges[] = {300,  400,  510,  630,  770,  920,  1080, 1270, 1480,
                            1720, 2000, 2320, 2700, 3150, 3700, 4400, 5300, 6400};
    for (int k = 0; k < 18; ++k) {
        CAPTURE(edges[k]);
        CHECK(std::abs(bark(hertz(edges[k])).value - (k + 3)) < 0.1);
    }
}

TEST_CASE("equivalent rectangular bandwidths follow Glasberg & Moore 1990, Hear. Res. 47, 103") {
    CHECK(equivalent_rectangular_bandwidth(100_Hz).value() == Approx(35.494).epsilon(1e-5));
    CHECK(equivalent_rectangular_bandwidth(1000_Hz).value() == Approx(132.639).epsilon(1e-5));
    CHECK(equivalent_rectangular_bandwidth(4000_Hz).value() == Approx(456.456).epsilon(1e-5));
    CHECK(cams(100_Hz).value == Approx(3.3696).epsilon(1e-4));
    CHECK(cams(500_Hz).value == Approx(10.7665).epsilon(1e-5));
    CHECK(cams(4000_Hz).value == Approx(27.1074).epsilon(1e-5));
}

TEST_CASE("A-weighting gives the table of IEC 61672-1 at the exact third-octave frequencies") {
    // The table is rounded to 0.1 dB.
    for (auto [hz, dB] : {At{100, -19.1},
                          {199.526, -10.9},
                          {251.189, -8.6},
                          {501.187, -3.2},
                          {1000, 0},
                          {1995.26, 1.2},
                          {2511.89, 1.3},
                          {3981.07, 1.0},
                          {7943.28, -1.1}}) {
        CAPTURE(hz);
        CHECK(std::abs(a_weighting(hertz(hz)).value - dB) < 0.06);
    }
}
