// SPDX-License-Identifier: MIT
// Welsh, on words of the anthem (E. James, 1856) and others, as the grammars describe them: G. Awbery in Ball
// & Fife, The Celtic Languages (1993); S. Hannahs, The Phonology of Welsh (2013); from memory.
#include "../in_one_line.hpp"

#include <doctest/doctest.h>

using namespace vowelway::diction;
using test::nuclei;

TEST_CASE("Welsh: clear y in the last syllable, obscure y before it and in little words") {
    CHECK(nuclei("mynydd dyn y fy hyn", Language::welsh) == "ə ɨ | ɨː | ə | ə | ɨ");
    CHECK(nuclei("dynion ysbryd", Language::welsh) == "ə ɔ | ə ɨ");
}

TEST_CASE("Welsh: w and i are vowels, glides and consonants") {
    CHECK(nuclei("gwlad cwm gwyn mwyn swydd", Language::welsh) == "aː | ʊ | ɨ | uːɨ̯ | ʊɨ̯");
    CHECK(nuclei("iaith cariad gweithiwr", Language::welsh) == "ai̯ | a a | ei̯ ʊ");
    CHECK(nuclei("tŵr dŵr", Language::welsh) == "uː | uː");
}

TEST_CASE("Welsh: diphthongs, and long vowels in words of one syllable") {
    CHECK(nuclei("mae hen wlad fy nhadau yn annwyl i mi", Language::welsh) ==
          "aɨ̯ | eː | aː | ə | a aɨ̯ | ə | a ʊɨ̯ | iː | iː");
    CHECK(nuclei("coed coeden nos nosau", Language::welsh) == "oːɨ̯ | ɔɨ̯ ɛ | oː | ɔ aɨ̯");
}

TEST_CASE("Welsh stress is on the last syllable but one") {
    auto const words = transcribe("cariad cynghanedd", Language::welsh);
    CHECK(words[0].syllables[0].stressed);
    CHECK(words[1].syllables[1].stressed);
}
