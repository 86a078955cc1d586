// SPDX-License-Identifier: MIT
#include "unit/diction/in_one_line.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::diction;
using namespace vowelway::diction::test;

// Adams: no r after vowels on the stage; "night" is held on its first part.
TEST_CASE("English: neutral stage pronunciation, r colour as an option") {
    CHECK(nuclei("night", Language::english) == "aɪ̯");
    CHECK(held("go", Language::english) == "o");
    CHECK(held("heart", Language::english) == "ɑ");
    CHECK(held("one a once", Language::english) == "ʌ ə ʌ");
    CHECK(held("dance and land", Language::english) == "ɑ æ æ");
    DictionOptions coloured;
    coloured.r_colour = true;
    CHECK(held("heart", Language::english, coloured) == "ɑ˞");
    CHECK(held("very", Language::english, coloured) == held("very", Language::english));
}
