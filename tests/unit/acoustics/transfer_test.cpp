// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/note_spectrum.hpp"
#include "vowelway/acoustics/source.hpp"
#include "vowelway/acoustics/transfer.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <random>
#include <stdexcept>

using namespace vowelway;
using namespace vowelway::acoustics;
using doctest::Approx;

namespace {

// Fant's (1960) neutral tube: resonances at odd multiples of 500 Hz, each 50 Hz wide.
ResonanceSet neutral() {
    return {{ResonancePeak{500_Hz, 50_Hz}, {1500_Hz, 50_Hz}, {2500_Hz, 50_Hz}, {3500_Hz, 50_Hz}}};
}

struct Case {
    BandwidthModel model;
    double hz, fo, width;
};

} // namespace

TEST_CASE("bandwidth models give their published values") {
    using enum BandwidthModel;
    // Hawks & Miller 1995: the polynomials worked at fo = 132 and 220 Hz; Tappert et al. 1963 with
    // Khodai-Joopari & Clermont 2002; Fant 1972 (from memory).
    for (auto c : {Case{hawks_miller, 300, 132, 53.213},
                   {hawks_miller, 400, 132, 39.588},
                   {hawks_miller, 500, 132, 37.794},
                   {hawks_miller, 700, 132, 40.216},
                   {hawks_miller, 1500, 132, 47.136},
                   {hawks_miller, 3500, 132, 174.678},
                   {hawks_miller, 4500, 132, 283.293},
                   {hawks_miller, 300, 220, 66.517},
                   {hawks_miller, 700, 220, 50.270},
                   {hawks_miller, 2500, 220, 113.872},
                   {swept_tone, 1000, 132, 58.333},
                   {swept_tone, 3500, 132, 152.083},
                   {swept_tone, 250, 132, 84.630},
                   {swept_tone, 300, 132, 72.912},
                   {closed_glottis, 250, 132, 75.392},
                   {closed_glottis, 500, 132, 40.000},
                   {closed_glottis, 1500, 132, 81.308},
                   {closed_glottis, 2500, 132, 170.321}}) {
        CAPTURE(c.hz);
        CHECK(bandwidth(c.model, hertz(c.hz), Pitch(hertz(c.fo))).value() == Approx(c.width).epsilon(2e-4));
    }
    // The two polynomials of Hawks & Miller meet at 500 Hz with a step of 0.85 Hz.
    CHECK(bandwidth(hawks_miller, hertz(499.999)).value() - bandwidth(hawks_miller, 500_Hz).value() ==
          Approx(-0.848).epsilon(0.01));
    // Beyond speech the factor of fo stays.
    CHECK(bandwidth(hawks_miller, 700_Hz, Pitch(880_Hz)) == bandwidth(hawks_miller, 700_Hz, Pitch(264_Hz)));
}

TEST_CASE("radiation's share of the bandwidth is that of Stevens 1998") {
    // Worked for 3 cm², 17.7 cm; the book rounds to 2, 16, 50 Hz for the first three resonances.
    auto const share = [](double hz) {
        return radiation_bandwidth(hertz(hz), square_centimetres(3), 17.7_cm).value();
    };
    CHECK(share(500) == Approx(1.8).epsilon(0.01));
    CHECK(share(1500) == Approx(16.16).epsilon(0.001));
    CHECK(share(2500) == Approx(44.89).epsilon(0.001));
}

TEST_CASE("Fant's source with radiation falls 6 dB an octave above 100 Hz") {
    // Fant 1960 eq. 1.3-2: (f/100)/(1 + (f/100)²), in dB re 100 Hz.
    Source const source{.slope = {-20 * std::log10(4.0)}};
    Pitch const low(100_Hz);
    auto const net = [&](double hz) {
        auto const f = hertz(hz);
        return (source.flow_level(f, low) + radiated_level(f) - source.flow_level(100_Hz, low) -
                radiated_level(100_Hz))
            .value;
    };
    CHECK(net(250) == Approx(-3.227).epsilon(1e-3));
    CHECK(net(500) == Approx(-8.299).epsilon(1e-3));
    CHECK(net(1000) == Approx(-14.066).epsilon(1e-3));
    CHECK(net(2000) == Approx(-20.022).epsilon(1e-3));
}

TEST_CASE("ten decibels louder: about fifteen at 3 kHz") {
    // Sundberg (from memory): partials near 3 kHz grow about 1.5 times as much as the level.
    Source const source;
    Pitch const fo(200_Hz);
    auto const growth = [&](double hz) {
        return (source.flow_level(hertz(hz), fo, {10}) - source.flow_level(hertz(hz), fo)).value;
    };
    CHECK(growth(500) == Approx(10).epsilon(0.05));
    CHECK(growth(3000) > 14);
    CHECK(growth(3000) < 16);
    CHECK(growth(200) < 10);
}

TEST_CASE("the upper register's steeper slope comes in between its two pitches") {
    Source const source;
    CHECK(source.slope_at(Pitch(220_Hz)).value == Approx(-12));
    CHECK(source.slope_at(Pitch(hertz(400 * std::sqrt(2.0)))).value == Approx(-17));
    CHECK(source.slope_at(Pitch(1000_Hz)).value == Approx(-22));
    Source const abrupt{.upper_begins = 500_Hz, .upper_complete = 500_Hz};
    CHECK(abrupt.slope_at(Pitch(499_Hz)).value == Approx(-12));
    CHECK(abrupt.slope_at(Pitch(500_Hz)).value == Approx(-22));
}

TEST_CASE("higher-pole correction: Fant's polynomials against the product they stand for") {
    // Fant 1960 eq. 1.3-4 at 2 kHz and 500 Hz quarter wave; exact: -20 log10 prod (1 - (x/(2k-1))²) over the
    // poles left out.
    CHECK(higher_pole_correction(2, 2000_Hz, 500_Hz).value == Approx(19.5712));
    CHECK(higher_pole_correction(3, 2000_Hz, 500_Hz).value == Approx(12.3648));
    CHECK(higher_pole_correction(4, 2000_Hz, 500_Hz).value == Approx(9.0061).epsilon(1e-5));
    double exact = 0;
    for (int k = 5; k < 100000; ++k) exact -= 20 * std::log10(1 - std::pow(4.0 / (2 * k - 1), 2));
    CHECK(higher_pole_correction(4, 2000_Hz, 500_Hz).value == Approx(exact).epsilon(0.005));
    CHECK_THROWS_AS(higher_pole_correction(5, 2000_Hz, 500_Hz), std::invalid_argument);
}

TEST_CASE("the cascade gives Fant's worked levels of the neutral tube") {
    // Fant 1960 eq. 1.3-10/11, all bandwidths 50 Hz.
    auto const gain = [](double hz) { return tract_gain(neutral(), hertz(hz), 500_Hz).value; };
    CHECK(gain(250) == Approx(2.984).epsilon(0.004));
    CHECK(gain(500) == Approx(22.116).epsilon(0.001));
    CHECK(gain(1500) == Approx(22.114).epsilon(0.001));
    CHECK(std::abs(gain(2000) - -0.025) < 0.01);
    // Stevens 1998 eq. 3.60: a lossless tube has 1/|cos(pi f/2F1)|, 3.01 dB at half F1.
    CHECK(std::abs(gain(250) - 3.0103) < 0.05);
    // One resonance: about 0 dB at √2 F, -23.5 dB two octaves above; lowering F1 an octave costs 12 dB above
    // it.
    CHECK(resonance_gain({500_Hz, 50_Hz}, hertz(500 * std::sqrt(2.0))).value == Approx(-0.043).epsilon(0.02));
    CHECK(resonance_gain({500_Hz, 50_Hz}, 2000_Hz).value == Approx(-23.5018).epsilon(1e-5));
    double const lowered =
        (resonance_gain({250_Hz, 1_Hz}, 30000_Hz) - resonance_gain({500_Hz, 1_Hz}, 30000_Hz)).value;
    CHECK(lowered == Approx(-12.041).epsilon(1e-3));
}

TEST_CASE("radiated peaks of the neutral tube fall as Fant computed") {
    // Fant 1960: levels of F2 and F3 against F1 with source and radiation: -9.24 and -13.78 dB. fo = 100 Hz
    // puts a harmonic on every peak.
    Source const fant{.slope = {-20 * std::log10(4.0)}};
    auto const levels =
        NoteSpectrum(Pitch(100_Hz), 500_Hz, fant, {}, Blur::none()).harmonic_levels(neutral());
    CHECK((levels[14] - levels[4]).value == Approx(-9.243).epsilon(0.002));
    CHECK((levels[24] - levels[4]).value == Approx(-13.779).epsilon(0.002));
}

TEST_CASE("a spectrum's table says what the formulas say") {
    Source const source;
    Pitch const fo(233_Hz);
    NoteSpectrum const note(fo, 590_Hz, source, {-5}, Blur::none());
    auto const shape = resonance_set(450_Hz, 1900_Hz, 590_Hz);
    auto const levels = note.harmonic_levels(shape);
    REQUIRE(note.size() == 21);
    for (int n = 1; n <= note.size(); ++n) {
        auto const f = frequency_of({n}, fo);
        auto const expected =
            source.flow_level(f, fo, {-5}) + radiated_level(f) + tract_gain(shape, f, 590_Hz);
        CHECK(levels[n - 1].value == Approx(expected.value).epsilon(1e-9));
    }
}

TEST_CASE("blur: the closed form is the mean level over Cauchy-distributed misplacement") {
    // Poisson's integral for the harmonic function log|z|: checked here by drawing.
    ResonancePeak const peak{1200_Hz, 60_Hz};
    Blur const blur{Cents{0}, 50_Hz};
    double const half_width = 0.6745 * 50;
    CHECK(blur.widened(peak).value() == Approx(60 + 2 * half_width));
    std::mt19937 random(7);
    std::cauchy_distribution<double> misplaced(0, half_width);
    double sum = 0;
    int const draws = 200000;
    // The resonance's own denominator around its peak, where the mirror image at -F is far away.
    auto const level = [](double off, double half) { return -10 * std::log10(off * off + half * half); };
    for (int k = 0; k < draws; ++k) sum += level(15 + misplaced(random), 30);
    CHECK(sum / draws == Approx(level(15, 30 + half_width)).epsilon(0.003));
    CHECK(Blur::none().widened(peak).value() == Approx(60));
}

TEST_CASE("missing upper resonances are filled in above those that are known") {
    for (double r2 : {700.0, 1500.0, 2600.0, 3400.0}) {
        auto const shape = resonance_set(300_Hz, hertz(r2), 515_Hz);
        CHECK(shape.peaks[2].centre > shape.peaks[1].centre);
        CHECK(shape.peaks[3].centre > shape.peaks[2].centre);
    }
    // Peterson & Barney 1952, men: F3 of /i/ 3010, /a/ 2440 Hz; the rule's residual is about 180 Hz for men.
    CHECK(std::abs(resonance_set(270_Hz, 2290_Hz, 506_Hz).peaks[2].centre.value() - 3010) < 240);
    CHECK(std::abs(resonance_set(730_Hz, 1090_Hz, 506_Hz).peaks[2].centre.value() - 2440) < 180);
    CHECK(quarter_wave(17.5_cm).value() == Approx(500));
    CHECK(in_centimetres(tract_of(500_Hz)) == Approx(17.5));
}

TEST_CASE("the correction for higher poles has no corner that would be seen as a resonance") {
    auto const quarter = 500_Hz;
    for (double f = 100; f < 8000; f += 10) {
        auto const at = [&](double hz) { return higher_pole_correction(4, hertz(hz), quarter).value; };
        double const before = at(f) - at(f - 10), after = at(f + 10) - at(f);
        CAPTURE(f);
        CHECK(std::abs(after - before) <
              0.02); // dB; a corner of the fourth-order term held at 4 kHz gives 0.2
    }
}
