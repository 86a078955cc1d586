// SPDX-License-Identifier: MIT
#include "unit/diction/in_one_line.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::diction;
using namespace vowelway::diction::test;

// RAE, Ortografía 2010: diphthongs, triphthongs, hiatus by the written accent.
TEST_CASE("Spanish: glides and hiatus") {
    CHECK(nuclei("cielo país reina buey", Language::spanish) == "e o | a i | ei̯ a | ei̯");
    CHECK(nuclei("quiero guerra agüita averiguáis", Language::spanish) == "e o | e a | a i a | a e i ai̯");
    CHECK(nuclei("corazón", Language::spanish) == "o a o");
}
