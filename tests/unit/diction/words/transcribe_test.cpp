// SPDX-License-Identifier: MIT
#include "vowelway/core/error.hpp"
#include "vowelway/diction/sing_words.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace vowelway;
using namespace vowelway::diction;

TEST_CASE("one word for each piece of text that has letters, as it was written") {
    auto const words = transcribe("«Amor», l’alma — 12 …", Language::italian);
    REQUIRE(words.size() == 3);
    CHECK(words[0].word == "Amor");
    CHECK(words[1].word == "l’alma");
    CHECK(words[1].syllables.size() == 2);
    CHECK(words[2].word == "12");
    std::string joined;
    for (auto const& s : words[1].syllables) joined += s.text;
    CHECK(joined == words[1].word);
}

TEST_CASE("a text that cannot be read is refused with a remedy, one without vowels is said to be doubtful") {
    CHECK_THROWS_AS(transcribe("\xff\xfe", Language::italian), InputError);
    CHECK_THROWS_AS(transcribe(std::string(5 << 20, 'a'), Language::italian), InputError);
    CHECK_THROWS_AS(transcribe(std::string(1000, 'a'), Language::italian), InputError);
    auto const words = transcribe("pst", Language::italian);
    REQUIRE(words.size() == 1);
    CHECK(words[0].guessed);
}
