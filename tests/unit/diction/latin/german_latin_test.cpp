// SPDX-License-Identifier: MIT
// Latin in German use: T. Siebs, Deutsche Aussprache (1969); H. Copeman, Singing in Latin (1990); from
// memory.
#include "../in_one_line.hpp"
#include "vowelway/diction/sung_text.hpp"

#include <doctest/doctest.h>

using namespace vowelway::diction;
using test::nuclei;

TEST_CASE("vowels are closed in open syllables and open in closed ones, ae, oe and y are ɛ, ø and y") {
    CHECK(nuclei("kyrie eleison gloria in excelsis", Language::german_latin) ==
          "y i e | e e i ɔ | o i a | ɪ | ɛ ɛ ɪ");
    CHECK(nuclei("caeli coena quae hymnus", Language::german_latin) == "ɛː i | ø a | ɛː | ʏ ʊ");
    CHECK(nuclei("deus noster laudamus", Language::german_latin) == "e ʊ | ɔ ɛ | aʊ̯ a ʊ");
}

TEST_CASE("c before front vowels is ts, qu is kv, s between vowels z") {
    auto const line =
        sung_text("Caelum quoniam miserere gratia magnus michi", Language::german_latin).lines.front();
    CHECK(line.words[0].ipa == "tsɛːlʊm");
    CHECK(line.words[1].ipa == "kvoniam");
    CHECK(line.words[2].ipa == "mizerere");
    CHECK(line.words[3].ipa == "ɡratsia");
    CHECK(line.words[4].ipa == "maɡnʊs");
}
