// SPDX-License-Identifier: MIT
// Languages whose spelling tells the vowels, on words of "The North Wind and the Sun" as the illustrations of
// the IPA transcribe it: Hungarian by T. Szende and Czech by J. Dankovicova (Handbook of the IPA, 1999),
// Polish by W. Jassem (J. IPA 33, 2003); Finnish: Suomi, Toivanen & Ylitalo (2008); Russian: Jones & Ward
// (1969). All from memory.
#include "../in_one_line.hpp"

#include <doctest/doctest.h>

using namespace vowelway::diction;
using test::nuclei;
using test::syllables;

TEST_CASE("Hungarian") {
    CHECK(nuclei("egyszer az északi szél és a nap vetélkedtek", Language::hungarian) ==
          "ɛ ɛ | ɒ | eː ɒ i | eː | eː | ɒ | ɒ | ɛ eː ɛ ɛ");
    CHECK(nuclei("gyönyörű esőfelhő", Language::hungarian) == "ø ø yː | ɛ øː ɛ øː");
}

TEST_CASE("Czech, with r and l that carry a syllable") {
    CHECK(nuclei("severák a slunce se hádali", Language::czech) == "ɛ ɛ aː | a | u ɛ | ɛ | aː a ɪ");
    CHECK(nuclei("srdce vlk krásný dům", Language::czech) == "ə ɛ | ə | aː iː | uː");
    CHECK(nuclei("mouka", Language::czech) == "ou̯ a");
}

TEST_CASE("Polish") {
    CHECK(nuclei("północny wiatr i słońce", Language::polish) == "uu̯ ɔ ɨ | a | i | ɔ ɛ");
    // Before a stop the nasal vowel is a plain one with n, m or ŋ; before a fricative it stays (Jassem).
    CHECK(nuclei("się są ręką", Language::polish) == "ɛ | ɔ̃ | ɛ ɔ̃");
    CHECK(nuclei("ząb wąż gęś wziął", Language::polish) == "ɔ | ɔ̃ | ɛ̃ | ɔu̯");
    CHECK(nuclei("mój był nauka", Language::polish) == "ui̯ | ɨu̯ | a u a");
}

TEST_CASE("Finnish: long vowels are one, diphthongs hold their first part") {
    CHECK(nuclei("pohjantuuli ja aurinko", Language::finnish) == "o ɑ uː i | ɑ | ɑu̯ i o");
    CHECK(nuclei("yö tie korkea sydän", Language::finnish) == "yø̯ | ie̯ | o e ɑ | y æ");
    // Behind the first syllable a pair that ends in u or y is one vowel in an open syllable only.
    CHECK(nuclei("joulutauko rakkaus talojen lasien", Language::finnish) ==
          "ou̯ u ɑu̯ o | ɑ ɑ u | ɑ o e | ɑ i e");
}

TEST_CASE("Russian: what is weak, what is hard, and where syllables part") {
    CHECK(nuclei("молоко жизнь", Language::russian) == "a a o | ɨ");
    CHECK(syllables("молоко", Language::russian) == "мо-ло-ко");
    CHECK(nuclei("ещё моя мой", Language::russian) == "ɪ o | a a | oi̯");
    CHECK(nuclei("душа гора горько облака", Language::russian) == "u a | a a | o a | a a a");
}
