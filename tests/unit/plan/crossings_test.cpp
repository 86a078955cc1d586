// SPDX-License-Identifier: MIT
#include "vowelway/plan/crossings.hpp"
#include "vowelway/plan/zones.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace vowelway;
using namespace vowelway::plan;

namespace {
Resonance resonance(double hz, double sd = 30) { return {hertz(hz), hertz(sd), false, std::nullopt}; }
VowelResonances vowel(double r1, double r2) {
    return {parse_vowel("a"), resonance(r1), resonance(r2), std::nullopt, std::nullopt, false, ""};
}
} // namespace

// n fo = fR in the notation of Titze et al. 2015, J. Acoust. Soc. Am. 137, 3005; pitches by ISO 16 and equal
// temperament.
TEST_CASE("a crossing lies at fR/n, with the deviation of the resonance") {
    Tuning const tuning;
    auto const turn = crossing({2}, {1}, resonance(700, 35));
    CHECK(in_hertz(turn.pitch.frequency()) == doctest::Approx(350.0));
    CHECK(tuning.name(turn.pitch).str() == "F4 +4 c"); // 1200 log2(350/349.228) = 3.82
    CHECK(turn.sd.value == doctest::Approx(1200 * std::log2(735.0 / 700)));
    CHECK(turn.str() == "2fo = fR1");
    auto const third = crossing({3}, {2}, resonance(1100));
    CHECK(in_hertz(third.pitch.frequency()) == doctest::Approx(1100.0 / 3));
    // 1300 Hz over 4 is 24.48 cents below E4.
    CHECK((crossing({4}, {2}, resonance(1300)).pitch - tuning.pitch(parse_spelled_pitch("E4"))).value ==
          doctest::Approx(-24.48).epsilon(0.001));
}

// Peterson & Barney 1952, J. Acoust. Soc. Am. 24, 175, Table II (means, men and women): fR1/2 as pitches.
TEST_CASE("turning points of the printed averages of men and women") {
    Tuning const tuning;
    struct Row {
        double f1;
        char const* pitch;
        double cents;
    };
    for (auto const& row :
         {Row{270, "C#3", -45}, Row{310, "D#3", -6}, Row{530, "C4", 22}, Row{660, "E4", 2},
          Row{850, "G#4", 40}, Row{440, "A3", 0}, Row{370, "F#3", 0}, Row{640, "D#4", 49}}) {
        auto const turn = crossing({2}, {1}, resonance(row.f1));
        auto const cents = turn.pitch - tuning.pitch(parse_spelled_pitch(row.pitch));
        CHECK_MESSAGE(std::abs(cents.value - row.cents) <= 0.6, row.f1);
    }
}

TEST_CASE("every crossing in the range is found once, and none outside") {
    Tuning const tuning;
    Pitch const low = tuning.pitch(parse_spelled_pitch("C3")), high = tuning.pitch(parse_spelled_pitch("A4"));
    auto const found = crossings(vowel(700, 1100), low, high);
    // 130.8..440 Hz: 700/n for n = 2..5, 1100/n for n = 3..8.
    REQUIRE(found.size() == 10);
    for (std::size_t i = 0; i < found.size(); ++i) {
        auto const& c = found[i];
        double const centre = c.resonance.number == 1 ? 700 : 1100;
        CHECK(in_hertz(frequency_of(c.harmonic, c.pitch)) == doctest::Approx(centre));
        CHECK(c.pitch >= low);
        CHECK(c.pitch <= high);
        if (i > 0) CHECK(found[i - 1].pitch <= c.pitch);
    }
    CHECK(crossings(vowel(700, 1100), high, high).empty());
    CHECK(crossings(vowel(880, 1800), high, high).size() == 1); // the end of the range belongs to it
}

TEST_CASE("zones rise from open to above, and their probabilities with them") {
    auto const r1 = resonance(700, 20);
    auto const at = [&](double hz) { return read_zone(Pitch(hertz(hz)), r1); };
    CHECK(at(200).zone == Zone::open);
    CHECK(at(345).zone == Zone::turning);
    CHECK(at(350).p_turned == doctest::Approx(0.5));
    CHECK(at(360).p_turned ==
          doctest::Approx(0.841344746)); // one deviation: tables of the normal distribution
    CHECK(at(500).zone == Zone::close);
    CHECK(at(690).zone == Zone::meeting);
    CHECK(at(700).p_above == doctest::Approx(0.5));
    CHECK(at(800).zone == Zone::above);
    double last = 0;
    for (double hz = 100; hz < 1000; hz *= 1.02) {
        CHECK(at(hz).p_turned >= last);
        CHECK(at(hz).p_above <= at(hz).p_turned);
        last = at(hz).p_turned;
    }
}
