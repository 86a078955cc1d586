// SPDX-License-Identifier: MIT
// A rendered note is the planner's: levels, pitch, band, and the same bytes each time.
#include "measures.hpp"
#include "vowelway/acoustics/transfer.hpp"
#include "vowelway/sound/voice.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstring>

using namespace vowelway;
using namespace vowelway::sound;
using namespace vowelway::sound::test;

namespace {

Voice const man{.quarter = hertz(515), .source = {}, .blur = {}};

Moment moment(double fo, double r1, double r2, double loudness = 0) {
    return {.pitch = Pitch(hertz(fo)), .r1 = hertz(r1), .r2 = hertz(r2), .loudness = {loudness}};
}

std::vector<Decibels> planned(Voice const& v, Moment const& m) {
    return acoustics::NoteSpectrum(m.pitch, v.quarter, v.source, m.loudness, v.blur)
        .harmonic_levels(acoustics::resonance_set(m.r1, m.r2, v.quarter));
}

} // namespace

TEST_CASE("every harmonic of a steady note has the planner's level within 0.1 dB") {
    auto voice = man;
    voice.breathy = false;
    for (auto const& m : {moment(98, 310, 2100), moment(220, 700, 1200, -7), moment(440, 520, 900, 7),
                          moment(932, 1000, 1700)}) {
        auto const part = sung(voice, steady(m));
        auto const x = samples_of(*part, 1.5);
        auto const expected = planned(voice, m);
        double const fo = in_hertz(m.pitch.frequency());
        CAPTURE(fo);
        for (std::size_t n = 0; n < expected.size(); ++n) {
            CAPTURE(n + 1);
            CHECK(std::abs(level_at(x, fo * static_cast<double>(n + 1), 12000, 60000) - expected[n].value) <
                  0.1);
        }
    }
}

TEST_CASE("breath leaves the strong harmonics within 0.1 dB and lies about as far below them as asked") {
    auto const m = moment(220, 700, 1200);
    auto const expected = planned(man, m);
    auto const x = samples_of(*sung(man, steady(m)), 4);
    auto quiet = man;
    quiet.breathy = false;
    auto const pure = samples_of(*sung(quiet, steady(m)), 4);
    double const loudest = std::ranges::max(expected).value;
    for (std::size_t n = 0; n < expected.size(); ++n)
        if (expected[n].value > loudest - 30)
            CHECK(std::abs(level_at(x, 220.0 * static_cast<double>(n + 1), 12000, 180000) -
                           expected[n].value) < 0.1);
    double noise = 0, tone = 0;
    for (std::size_t i = 12000; i < x.size(); ++i) {
        noise += (x[i] - pure[i]) * (x[i] - pure[i]);
        tone += pure[i] * pure[i];
    }
    CHECK(10 * std::log10(tone / noise) == doctest::Approx(man.breath_below.value).epsilon(0.08));
}

TEST_CASE("the pitch is right within 1 cent") {
    auto voice = man;
    voice.breathy = false;
    for (double fo : {98.0, 261.63, 659.26}) {
        auto const x = samples_of(*sung(voice, steady(moment(fo, 600, 1500))), 2);
        // A cent aside, a window of 1.5 s sees less of the fundamental on both sides alike.
        double const cent = std::exp2(1.0 / 1200);
        double const here = level_at(x, fo, 12000, 84000);
        CHECK(here > level_at(x, fo * cent, 12000, 84000));
        CHECK(here > level_at(x, fo / cent, 12000, 84000));
    }
}

TEST_CASE("nothing folds back: above the band all is 80 dB below the loudest harmonic") {
    auto voice = man;
    voice.breathy = false;
    for (double fo : {110.0, 523.25, 987.0}) {
        auto const m = moment(fo, 700, 1400, 7);
        auto const x = samples_of(*sung(voice, steady(m, Vibrato{.extent = Cents{50}})), 2.5);
        double const loudest = std::ranges::max(planned(voice, m)).value;
        for (double hz = 6500; hz < 24000; hz += 37) {
            CAPTURE(hz);
            CHECK(level_at(x, hz, 24000, 48000) < loudest - 80);
        }
        // Between the harmonics of a steady note too.
        auto const still = samples_of(*sung(voice, steady(m)), 1.5);
        for (double n = 1.5; n < 5.5; n += 1) CHECK(level_at(still, n * fo, 12000, 60000) < loudest - 80);
    }
}

TEST_CASE("vibrato goes to either side of the pitch as far as asked") {
    auto const wave = Vibrato{.extent = Cents{60}, .rate = hertz(5)};
    double low = 0, high = 0;
    for (double t = 1; t < 3; t += 0.001) {
        auto const c = swing(wave, seconds(t), seconds(t)).value;
        low = std::min(low, c);
        high = std::max(high, c);
    }
    CHECK(high == doctest::Approx(60).epsilon(0.001));
    CHECK(low == doctest::Approx(-60).epsilon(0.001));
    CHECK(swing(wave, seconds(0.1), seconds(0.1)).value == 0);
}

TEST_CASE("the same note is the same bytes, however it is cut into blocks") {
    auto const m = moment(311, 600, 1500);
    auto const whole = samples_of(*sung(man, steady(m, Vibrato{})), 0.5);
    auto const again = sung(man, steady(m, Vibrato{}));
    std::vector<double> pieces(whole.size(), 0.0);
    for (std::size_t at = 0, size = 1; at < pieces.size(); at += size, size = size % 701 + 97) {
        size = std::min(size, pieces.size() - at);
        again->add(std::span(pieces).subspan(at, size));
    }
    CHECK(std::memcmp(whole.data(), pieces.data(), whole.size() * sizeof(double)) == 0);
}
