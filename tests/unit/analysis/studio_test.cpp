// SPDX-License-Identifier: MIT
// What a teacher is told of a singer before the lesson.
#include "vowelway/analysis/studio.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::analysis;

namespace {

Measurement measured(char const* ipa, double r1, char const* day) {
    Measurement m;
    m.vowel = parse_vowel(ipa);
    m.method = Method::whisper;
    m.date = day;
    m.r1 = {hertz(r1), hertz(10), false, {}};
    m.r2 = {hertz(2000), hertz(20), false, {}};
    return m;
}

VowelResonances known(char const* ipa, bool estimated = false) {
    VowelResonances v;
    v.vowel = parse_vowel(ipa);
    v.r1 = {hertz(400), hertz(10), false, {}};
    v.r2 = {hertz(2000), hertz(20), false, {}};
    v.estimated = estimated;
    return v;
}

} // namespace

TEST_CASE("days between days, by the calendar") {
    CHECK(days_between("2026-10-03", "2026-11-28") == 56);
    CHECK(days_between("2024-02-28", "2024-03-01") == 2); // a leap year
    CHECK(days_between("2026-12-31", "2027-01-01") == 1);
    CHECK_FALSE(days_between("", "2026-11-28"));
    CHECK_FALSE(days_between("2026-02-30", "2026-11-28")); // no such day
}

TEST_CASE("age, what is missing, and what has clearly changed") {
    Profile p;
    p.singer.vowels = {known("i"), known("a"), known("u", true)};
    p.singer.provenance.date = "2026-05-01";
    p.history = {measured("i", 300, "2026-05-01"), measured("i", 300, "2026-09-01"),
                 measured("a", 700, "2026-05-01"), measured("a", 800, "2026-09-01")};
    auto const s = studio_singer(p, "2026-09-11");
    CHECK(s.last_measured == "2026-09-01");
    CHECK(s.days == 10);
    CHECK_FALSE(s.is_old());
    CHECK(studio_singer(p, "2027-09-11").is_old());
    std::string missing;
    for (auto const& v : s.missing) missing += v.ipa();
    CHECK(missing == "eɛɔou"); // u is estimated only
    REQUIRE(s.changed.size() == 1);
    CHECK(s.changed[0].measurement.vowel.ipa() == "a");
    CHECK(s.changed[0].change->r1.value > 0);
    CHECK_FALSE(studio_singer({}, "2026-09-11").days);
}
