// SPDX-License-Identifier: MIT
#include "vowelway/plan/known_resonances.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace vowelway;
using namespace vowelway::plan;

namespace {

VowelResonances vowel(char const* ipa, double r1, double r2) {
    return {parse_vowel(ipa),
            {hertz(r1), hertz(r1 * 0.05), false, std::nullopt},
            {hertz(r2), hertz(r2 * 0.04), false, std::nullopt},
            std::nullopt,
            std::nullopt,
            false,
            ""};
}

// Peterson & Barney 1952, Table II: men, and women.
Singer men() {
    Singer s;
    s.name = "men";
    s.average = true;
    s.vowels = {vowel("i", 270, 2290), vowel("ɛ", 530, 1840), vowel("ɑ", 730, 1090), vowel("u", 300, 870)};
    return s;
}
Singer women_without_e() {
    Singer s;
    s.name = "women";
    s.vowels = {vowel("i", 310, 2790), vowel("ɑ", 850, 1220), vowel("u", 370, 950)};
    return s;
}

} // namespace

TEST_CASE("a measured vowel is taken as it is, whatever its length mark") {
    auto const reference = men();
    auto const found = resonances_of(parse_vowel("iː"), women_without_e(), &reference);
    REQUIRE(found);
    CHECK_FALSE(found->estimated);
    CHECK(in_hertz(found->r1.centre) == 310);
}

// Peterson & Barney 1952: women's /ɛ/ is 610 and 2330 Hz. Estimated from their other vowels and the men's, it
// must lie within two of its own stated deviations, and nearer than the men's value.
TEST_CASE("a missing vowel is estimated from the others, and the printed one lies within its uncertainty") {
    auto const reference = men();
    auto const found = resonances_of(parse_vowel("ɛ"), women_without_e(), &reference);
    REQUIRE(found);
    CHECK(found->estimated);
    CHECK_FALSE(found->origin.empty());
    CHECK(std::abs(in_hertz(found->r1.centre) - 610) < 2 * in_hertz(found->r1.sd));
    CHECK(std::abs(in_hertz(found->r2.centre) - 2330) < 2 * in_hertz(found->r2.sd));
    CHECK(std::abs(in_hertz(found->r1.centre) - 610) < std::abs(530.0 - 610));
    CHECK(std::abs(in_hertz(found->r2.centre) - 2330) < std::abs(1840.0 - 2330));
    CHECK(found->r1.sd_assumed);
}

TEST_CASE("the farther the guess, the wider its deviation") {
    auto const reference = men();
    auto const near = resonances_of(parse_vowel("ɛ"), women_without_e(), &reference),
               far = resonances_of(parse_vowel("œ"), women_without_e(), &reference);
    REQUIRE(far);
    CHECK(far->r1.sd / far->r1.centre > near->r1.sd / near->r1.centre);
    CHECK(far->vowel == parse_vowel("œ"));
}

TEST_CASE("without any vowel nothing is made up") {
    CHECK_FALSE(resonances_of(parse_vowel("a"), Singer{}, nullptr));
    auto const alone = resonances_of(parse_vowel("o"), women_without_e(), nullptr);
    REQUIRE(alone);
    CHECK(alone->origin.find("nearest") != std::string::npos);
}
