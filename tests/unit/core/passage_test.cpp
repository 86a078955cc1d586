// SPDX-License-Identifier: MIT
#include "vowelway/core/passage.hpp"

#include <doctest/doctest.h>

using namespace vowelway;

TEST_CASE("a transposition in words") {
    Passage passage;
    auto const told = [&](double by) {
        passage.transposed = by;
        return transposition_of(passage);
    };
    CHECK(told(0).empty());
    CHECK(told(-12) == "sung an octave lower than written");
    CHECK(told(24) == "sung 2 octaves higher than written");
    CHECK(told(1) == "sung 1 semitone higher than written");
    CHECK(told(-2.5) == "sung 2.5 semitones lower than written");
}
