// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/reach_cache.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::acoustics;

TEST_CASE("a reachable set is made once for one vowel of one tract, and is the set that would be made anew") {
    VowelResonances vowel; // /ɛ/ of women in Hillenbrand et al. 1995
    vowel.vowel = parse_ipa("ɛ");
    vowel.r1.centre = hertz(731);
    vowel.r2.centre = hertz(2058);
    vowel.r1.sd = hertz(20);
    ReachCache cache;
    auto const first = cache.get(vowel, 14.7_cm);

    auto less_sure = vowel; // deviations do not enter
    less_sure.r1.sd = hertz(60);
    less_sure.origin = "elsewhere";
    CHECK(cache.get(less_sure, 14.7_cm) == first);
    CHECK(cache.size() == 1);

    ReachableSet const anew(vowel, 14.7_cm);
    REQUIRE(anew.shapes().size() == first->shapes().size());
    for (std::size_t k = 0; k < anew.shapes().size(); ++k) {
        CHECK(anew.shapes()[k].effort == first->shapes()[k].effort);
        CHECK(anew.shapes()[k].gesture == first->shapes()[k].gesture);
        CHECK(anew.shapes()[k].resonances.r1() == first->shapes()[k].resonances.r1());
    }

    auto wider = vowel;
    wider.r1.bandwidth = hertz(90);
    auto with_r3 = vowel;
    with_r3.r3 = Resonance{.centre = hertz(2979), .sd = hertz(80), .bandwidth = {}};
    auto higher = vowel;
    higher.r2.centre = hertz(2059);
    auto other = vowel;
    other.vowel.nasal = true;
    for (auto const& different : {wider, with_r3, higher, other})
        CHECK(cache.get(different, 14.7_cm) != first);
    CHECK(cache.get(vowel, 14.8_cm) != first);
    CHECK(cache.get(vowel, 14.7_cm, {.farthest_up = Cents{1200}}) != first);
    CHECK(cache.size() == 7);
}

TEST_CASE("a set that cannot be made is an error each time it is asked for") {
    VowelResonances impossible;
    impossible.vowel = parse_ipa("a");
    impossible.r1.centre = hertz(900);
    impossible.r2.centre = hertz(700);
    ReachCache cache;
    for (int times = 0; times < 2; ++times) CHECK_THROWS(cache.get(impossible, 16_cm));
}
