// SPDX-License-Identifier: MIT
// Vowels of Swedish (C.-C. Elert 1995), Norwegian (G. Kristoffersen 2000) and Danish (H. Basbøll 2005), from
// memory, on words of songs that are in the public domain.
#include "../in_one_line.hpp"

#include <doctest/doctest.h>

using namespace vowelway::diction;
using test::nuclei;

TEST_CASE("Swedish: long and short vowels are different vowels") {
    CHECK(nuclei("mat natt ljus kung sol", Language::swedish) == "ɑː | a | ʉː | ɵ | uː");
    CHECK(nuclei("sång låta höst dö kärlek", Language::swedish) == "ɔ | oː a | œ | øː | æː eː");
    CHECK(nuclei("stjärna berg för min är", Language::swedish) == "æː a | æ | œː | iː | æː");
    CHECK(nuclei("kommer mannen", Language::swedish) == "ɔ ɛ | a ɛ");
}

TEST_CASE("Norwegian: the weak e, and e before r") {
    CHECK(nuclei("elsker landet vannet", Language::norwegian) == "ɛ ə | ɑ ə | ɑ ə");
    CHECK(nuclei("berg sol hus", Language::norwegian) == "æ | uː | ʉː");
}

TEST_CASE("Danish: v and g after a vowel stay consonants when they are sung, ej is ai") {
    CHECK(nuclei("kende kvinde lunden", Language::danish) == "ɛ ə | e ə | o ə");
    CHECK(nuclei("morgen", Language::danish) == "ɔ ə");
    CHECK(nuclei("mig nej havet", Language::danish) == "ai̯ | ai̯ | aː ə");
}
