// SPDX-License-Identifier: MIT
#include "vowelway/core/error.hpp"
#include "vowelway/diction/sing_words.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::diction;

TEST_CASE("the teacher's word list wins") {
    DictionOptions options;
    options.words.add("Sospiro", "sɔ.spi.rɔ");
    auto const words = transcribe("sospiro, SOSPIRO", Language::italian, options);
    REQUIRE(words.size() == 2);
    for (auto const& word : words) {
        REQUIRE(word.syllables.size() == 3);
        CHECK(word.syllables[0].ipa == "ɔ");
        CHECK(word.syllables[0].vowel.origin == VowelOrigin::override_);
    }
    CHECK_THROWS_AS(options.words.add("x", "pst"), InputError);
}
