// SPDX-License-Identifier: MIT
#include "unit/diction/in_one_line.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::diction;
using namespace vowelway::diction::test;

// Grubb: nasal vowels, mute e as a syllable the score may set, glides.
TEST_CASE("French: nasal vowels, glides, last and inner e") {
    CHECK(nuclei("rêve", Language::french) == "ɛ (ə)");
    CHECK(nuclei("enfant bien", Language::french) == "ɑ̃ ɑ̃ | ɛ̃");
    CHECK(nuclei("nuit", Language::french) == "i");
    CHECK(nuclei("étoile", Language::french) == "e a (ə)");
    CHECK(nuclei("facilement", Language::french) == "a i ə ɑ̃");
    CHECK(nuclei("aiment", Language::french) == "ɛ (ə)");
    CHECK(held("rêve", Language::french) == "ɛ œ");
}

// The name of a letter has more vowels than letters: all stand on the one letter.
TEST_CASE("French: more vowels than letters") {
    CHECK(nuclei("y", Language::french) == "i ɛ");
    CHECK(syllables("y", Language::french).find('y') != std::string::npos);
}
