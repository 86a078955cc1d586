// SPDX-License-Identifier: MIT
// Brazilian Portuguese: P. Barbosa & E. Albano (J. IPA 34, 2004) for the vowels; Cunha & Cintra (1985) for
// stress and syllables; from memory. Words from "Canção do exílio" (G. Dias, 1843).
#include "../in_one_line.hpp"

#include <doctest/doctest.h>

using namespace vowelway::diction;
using test::nuclei;
using test::syllables;

TEST_CASE("Portuguese: weak last vowels, nasal vowels, diphthongs") {
    CHECK(nuclei("minha terra tem palmeiras onde canta o sabiá", Language::portuguese) ==
          "i a | ɛ a | ẽi̯ | au̯ ei̯ a | õ i | ã a | u | a i a");
    CHECK(nuclei("coração não mãe põe muito", Language::portuguese) == "o a ãu̯ | ãu̯ | ãi̯ | õi̯ | ũi̯ u");
    CHECK(nuclei("noite saudade falam homens", Language::portuguese) == "oi̯ i | au̯ a i | a ãu̯ | o ẽi̯");
}

TEST_CASE("Portuguese: i and u beside a vowel") {
    CHECK(nuclei("história água quero guerra quando", Language::portuguese) ==
          "i ɔ a | a a | ɛ u | ɛ a | ã u");
    CHECK(nuclei("qu'esta gallo", Language::portuguese) == "ɛ a | a u");
    CHECK(nuclei("alegria saída raiz rainha", Language::portuguese) == "a e i a | a i a | a i | a i a");
}

TEST_CASE("Portuguese: open and closed e and o under stress") {
    CHECK(nuclei("amor sol flor voz rosa ele ela céu meu", Language::portuguese) ==
          "a o | ɔu̯ | o | ɔ | ɔ a | e i | ɛ a | ɛu̯ | eu̯");
}
