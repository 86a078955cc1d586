// SPDX-License-Identifier: MIT
#include "unit/diction/in_one_line.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::diction;
using namespace vowelway::diction::test;

// DOP: dólce, sospìro, cuòre, pietà, più; è open, é closed when written.
TEST_CASE("Italian: stress and the quality of e and o, glides, letters that only spell") {
    CHECK(nuclei("dolce sospiro", Language::italian) == "o e | o i o");
    CHECK(nuclei("cuore", Language::italian) == "ɔ e");
    CHECK(nuclei("pietà più ciel perché è", Language::italian) == "e a | u | ɛ | e e | ɛ");
    CHECK(nuclei("mio figlia aura mai", Language::italian) == "i o | i a | au̯ a | ai̯");
    CHECK(nuclei("lògica geologi", Language::italian) == "ɔ i a | e ɔ o i");
    CHECK(syllables("dolce sospiro figlia questo l'alma", Language::italian) ==
          "dol-ce so-spi-ro fi-glia que-sto l'al-ma");
}

// DOP: perché, né, nél, élla are closed; older prints write è for all of them. dilètto, petto (pètto) are
// open though -etto as a suffix is closed.
TEST_CASE("Italian: words that songs are full of, and older accents") {
    CHECK(nuclei("perchè nè caffè", Language::italian) == "e e | e | a ɛ");
    CHECK(nuclei("nel ella petto diletto boschetto", Language::italian) == "e | e a | ɛ o | i ɛ o | o e o");
    CHECK(nuclei("amor cor ritien stuol", Language::italian) == "a o | ɔ | i ɛ | ɔ");
}
