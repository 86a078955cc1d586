// SPDX-License-Identifier: MIT
// Hebrew (A. Laufer, Handbook of the IPA, 1999) and Church Slavonic (A. Gamanovich, Grammatika, 1964) in
// Latin letters, from memory: Deuteronomy 6, 4 and the litany.
#include "../in_one_line.hpp"
#include "vowelway/diction/sung_text.hpp"

#include <doctest/doctest.h>

using namespace vowelway::diction;
using test::nuclei;

TEST_CASE("Hebrew: five vowels, and glides written i and y") {
    CHECK(nuclei("Shema Yisrael Adonai Eloheinu Adonai echad", Language::hebrew) ==
          "ɛ a | i a ɛ | a ɔ ai̯ | ɛ ɔ ɛi̯ u | a ɔ ai̯ | ɛ a");
    CHECK(nuclei("yerushalayim shamayim", Language::hebrew) == "ɛ u a a i | a a i");
}

TEST_CASE("Hebrew stress: the last syllable, but for segolates and some endings") {
    for (auto const& [word, at] :
         {std::pair{"shalom", 1}, std::pair{"melech", 0}, std::pair{"eretz", 0}, std::pair{"eloheinu", 2},
          std::pair{"shamayim", 1}, std::pair{"barukh", 1}}) {
        CAPTURE(word);
        CHECK(transcribe(word, Language::hebrew).front().syllables[static_cast<std::size_t>(at)].stressed);
    }
}

TEST_CASE(
    "Church Slavonic keeps o without stress, y is a vowel between consonants and a glide beside vowels") {
    CHECK(nuclei("Gospodi pomilui", Language::church_slavonic) == "o o i | o i ui̯");
    CHECK(nuclei("Slava Ottsu i Synu i Svyatomu Dukhu", Language::church_slavonic) ==
          "a a | o u | i | ɨ u | i | a o u | u u");
    CHECK(nuclei("raduisya svyatyi tvoya", Language::church_slavonic) == "a ui̯ a | a ɨi̯ | o a");
}

TEST_CASE("their consonants come from the letters") {
    auto const hebrew = sung_text("Baruch ata shalom", Language::hebrew);
    REQUIRE(hebrew.lines.size() == 1);
    CHECK(hebrew.lines[0].words[0].ipa == "baˈrux");
    CHECK(hebrew.lines[0].words[2].ipa == "ʃaˈlɔm");
    auto const slavonic = sung_text("Bozhe dukhu ottsu", Language::church_slavonic);
    CHECK(slavonic.lines[0].words[0].ipa == "boʒɛ");
    CHECK(slavonic.lines[0].words[1].ipa == "duxu");
}
