// SPDX-License-Identifier: MIT
#include "unit/diction/in_one_line.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::diction;
using namespace vowelway::diction::test;

// Liber Usualis: ae and oe are one vowel; au is one syllable with a held; ti-a, De-us, glo-ri-a stay apart.
TEST_CASE("Latin in the Italian manner") {
    CHECK(nuclei("cælum caelum coelum", Language::latin) == "e u | e u | e u");
    // Names and loans whose e is a syllable of its own (Liber Usualis sets Is-ra-el, Mi-cha-el, No-e; from
    // memory).
    CHECK(nuclei("Israel Michael Raphaelem", Language::latin) == "i a e | i a e | a a e e");
    CHECK(nuclei("Noe Joel aer poeta coepit", Language::latin) == "o e | o e | a e | o e a | e i");
    CHECK(nuclei("lauda Deus gloria", Language::latin) == "au̯ a | e u | o i a");
    CHECK(nuclei("quoniam alleluia eius", Language::latin) == "o i a | a e u a | e u");
    CHECK(nuclei("grātia cui", Language::latin) == "a i a | ui̯");
    CHECK(held("domine", Language::latin) == "ɔ i ɛ");
}
