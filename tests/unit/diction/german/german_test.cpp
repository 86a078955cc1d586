// SPDX-License-Identifier: MIT
#include "unit/diction/in_one_line.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::diction;
using namespace vowelway::diction::test;

// Siebs: -en and -e with ə, -er with ɐ, diphthongs ae ao ɔø as three notations of ai au eu.
TEST_CASE("German: endings, prefixes, compounds") {
    CHECK(held("Liebe", Language::german) == "i ə");
    CHECK(held("Vater", Language::german) == "a ɐ");
    CHECK(held("Gesang", Language::german) == "ə a");
    CHECK(held("Verlust", Language::german) == "ɛ ʊ");
    CHECK(held("Sehnsucht", Language::german) == "e ʊ");
    CHECK(held("Blütenstaub", Language::german) == "y ə a");
    CHECK(held("der Weg", Language::german) == "e e");
    CHECK(held("süssen Füße", Language::german) == "y ə y ə");
    CHECK(held("Tagesablauf", Language::german) == "a ə a a");
}
