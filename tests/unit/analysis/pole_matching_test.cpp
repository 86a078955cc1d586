// SPDX-License-Identifier: MIT
// What the choice among poles leaves open. The poles of the first case are those of a whispered /ɑ/ of a
// model tract whose F1 and F2 lie a musical third apart in one broad hump (bench/measure_phones.cpp, a child
// of Peterson & Barney 1952): F3 passed for F2.
#include "analysis/pole_matching.hpp"

#include "analysis/processing.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace vowelway;
using namespace vowelway::analysis;

namespace {

Expectation child() {
    return {{{{hertz(1145), 0.157}, {hertz(1595), 0.152}, {hertz(3315), 0.142}}}, hertz(1400)};
}

Pole pole(double hz, double width) {
    Pole p;
    p.centre = hertz(hz), p.bandwidth = hertz(width);
    return p;
}

/// Deviation of F2 from the choice alone, in proportion.
double open_in_second(std::vector<Pole> const& poles) {
    auto const widest = hertz(700);
    auto const best = match_poles(poles, child(), widest);
    REQUIRE(best.formants[1]);
    return std::sqrt(variance_of_choice(best, 1, poles, child(), widest)) /
           in_hertz(best.formants[1]->centre);
}

FormantReading whispered(double width_of_second) {
    FormantReading r;
    r.whiteness = 0.98; // understood
    r.formants = {Formant{hertz(850), hertz(20), hertz(170)},
                  Formant{hertz(1325), hertz(40), hertz(width_of_second)}, std::nullopt};
    return r;
}

double second_widened(double width) {
    auto r = whispered(width);
    widen(r, r, Processing{});
    return r.formants[1]->sd / r.formants[1]->centre;
}

} // namespace

TEST_CASE("a pole that may be F3 leaves F2 unclear, and one in its place does not") {
    CHECK(open_in_second({pole(1341, 230), pole(2501, 358), pole(4700, 300)}) > 0.10); // then it is refused
    CHECK(open_in_second({pole(1150, 120), pole(1600, 140), pole(3300, 250)}) < 0.005);
    CHECK(open_in_second({pole(1300, 120), pole(1900, 140), pole(3500, 250)}) < 0.005); // unlike the average
}

TEST_CASE("of two poles equally far from where F2 is due, half the distance stays open") {
    // Both a tenth away in ln F and equally narrow: even odds but for the pole left out, so at most p = 1/2.
    double const open =
        open_in_second({pole(1145, 100), pole(1595 / 1.1, 100), pole(1595 * 1.1, 100), pole(3315, 200)});
    double const apart = 1.1 - 1 / 1.1; // of 1595 Hz
    CHECK(open > 0.3 * apart);
    CHECK(open < 0.75 * apart);
}

TEST_CASE("an F2 of a whisper that is wider than a tract makes it is not sure") {
    // 67 Hz at 1325 Hz are the losses of a closed tract (Fant 1972, from memory).
    CHECK(second_widened(120) == doctest::Approx(std::hypot(40.0 / 1325, 0.012)).epsilon(0.01));
    CHECK(second_widened(420) > 0.05);
}
