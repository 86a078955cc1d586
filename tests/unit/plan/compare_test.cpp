// SPDX-License-Identifier: MIT
#include "vowelway/plan/compare.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

using namespace vowelway;
using namespace vowelway::plan;

namespace {

struct Row {
    char const* vowel;
    double r1, r2, r3 = 0, r4 = 0;
};

Singer singer(VoiceType voice, std::initializer_list<Row> rows, double sd_share = 0.05) {
    Singer out;
    out.name = std::string(to_string(voice));
    out.voice = voice;
    for (auto const& row : rows) {
        auto const r = [&](double hz) { return Resonance{hertz(hz), hertz(sd_share * hz), false, {}}; };
        VowelResonances v;
        v.vowel = parse_vowel(row.vowel);
        v.r1 = r(row.r1), v.r2 = r(row.r2);
        if (row.r3 > 0) v.r3 = r(row.r3);
        if (row.r4 > 0) v.r4 = r(row.r4);
        out.vowels.push_back(v);
    }
    return out;
}

} // namespace

// Peterson & Barney (1952), table II: F1 of men and women, halved: where 2fo meets it. The names are those of
// the nearest equal-tempered pitch (ISO 16).
TEST_CASE("men and women of Peterson and Barney turn where half of F1 lies") {
    auto const men =
        singer(VoiceType::tenor,
               {{"i", 270, 2290}, {"ɛ", 530, 1840}, {"æ", 660, 1720}, {"ɑ", 730, 1090}, {"u", 300, 870}});
    auto const women =
        singer(VoiceType::soprano,
               {{"i", 310, 2790}, {"ɛ", 610, 2330}, {"æ", 860, 2050}, {"ɑ", 850, 1220}, {"u", 370, 950}});
    auto const c = compare_singers({{men, {}}, {women, {}}});
    REQUIRE(c.rows.size() == 5);
    struct Expected {
        char const* vowel;
        double men, women;
        char const* women_pitch;
    };
    for (auto const& e :
         {Expected{"i", 135, 155, "E♭3"}, Expected{"ɛ", 265, 305, "E♭4"}, Expected{"æ", 330, 430, "A4"},
          Expected{"ɑ", 365, 425, "A♭4"}, Expected{"u", 150, 185, "F♯3"}}) {
        CAPTURE(e.vowel);
        for (auto const& row : c.rows) {
            if (row.vowel != parse_vowel(e.vowel)) continue;
            CHECK(in_hertz(row.of[0]->turning.pitch.frequency()) == doctest::Approx(e.men));
            CHECK(in_hertz(row.of[1]->turning.pitch.frequency()) == doctest::Approx(e.women));
            CHECK(Tuning{}.name(row.of[1]->turning.pitch).pitch.str() == e.women_pitch);
            CHECK((row.of[0]->meeting.pitch - row.of[0]->turning.pitch).value ==
                  doctest::Approx(1200)); // an octave
            REQUIRE(row.differences.size() == 1);
            CHECK(row.differences[0].r1.value == doctest::Approx(1200 * std::log2(e.women / e.men)));
        }
    }
}

TEST_CASE("a difference is clear only beyond the uncertainty of both") {
    // 5 % each: the interval's deviation is 84.5 sqrt 2 = 119 cents; 1.645 of them (one-sided 95 % of the
    // normal distribution, any table) are 197 cents, a factor of 1.12.
    auto const with = [](double r1, double r1_other) {
        return compare_singers({{singer(VoiceType::tenor, {{"a", r1, 1200}}), {}},
                                {singer(VoiceType::bass, {{"a", r1_other, 1200}}), {}}})
            .rows[0]
            .differences[0];
    };
    CHECK(with(500, 500).p_r1_higher == doctest::Approx(0.5));
    CHECK_FALSE(clear(with(500, 550).p_r1_higher));
    CHECK(clear(with(500, 565).p_r1_higher));
    CHECK(clear(with(565, 500).p_r1_higher));
    CHECK(with(565, 500).p_r1_higher < 0.05);
    CHECK(with(500, 600).r1_sd.value == doctest::Approx(119.5).epsilon(0.01));
}

TEST_CASE("vowels: those measured, in the order of the rim, what is missing is estimated or left out") {
    auto const tenor =
        singer(VoiceType::tenor, {{"u", 320, 800}, {"i", 290, 2200}, {"a", 720, 1300}, {"aː", 720, 1300}});
    auto bass = singer(VoiceType::bass, {{"a", 650, 1200}});
    auto const c = compare_singers({{tenor, {}}, {bass, tenor}});
    REQUIRE(c.rows.size() == 3);
    CHECK(c.rows[0].vowel.ipa() == "i");
    CHECK(c.rows[2].vowel.ipa() == "u");
    REQUIRE(c.rows[0].of[1]);
    CHECK(c.rows[0].of[1]->resonances.estimated);
    CHECK_FALSE(c.rows[0].of[0]->resonances.estimated);
    CHECK(c.remarks.empty());

    auto average = tenor;
    average.average = true;
    auto const averages = compare_singers({{average, {}}, {average, {}}});
    CHECK(averages.rows.size() == 8);
    CHECK(averages.remarks.size() == 2);
    CHECK(compare_singers({{tenor, {}}, {bass, {}}}, parse_vowels("a a")).rows.size() == 1);
    CHECK_THROWS_AS(compare_singers({{tenor, {}}}), InputError);
}

// The handbooks place a fourth between the two passaggi of men (R. Miller 1986, from memory).
TEST_CASE("generic passaggi of men span a fourth, and know no countertenor") {
    for (auto const voice : {VoiceType::bass, VoiceType::baritone, VoiceType::tenor}) {
        auto const p = generic_passaggio(voice);
        REQUIRE(p);
        CHECK(p->second.key_number() - p->first.key_number() == 5);
    }
    CHECK_FALSE(generic_passaggio(VoiceType::countertenor));
    CHECK_FALSE(generic_passaggio(VoiceType::treble));
}

TEST_CASE("a singer stands nearest to the voice with the same resonances") {
    std::vector<Singer> const voices{singer(VoiceType::bass, {{"i", 270, 2050}, {"a", 660, 1200}}),
                                     singer(VoiceType::tenor, {{"i", 290, 2220}, {"a", 720, 1310}})};
    auto const me = singer(VoiceType::other, {{"i", 290, 2220}, {"a", 720, 1310}, {"u", 320, 800}});
    auto const among = place_among(me, voices);
    REQUIRE(among.size() == 2);
    CHECK(among[0].voice == VoiceType::tenor);
    CHECK(among[0].distance == doctest::Approx(0));
    CHECK(among[0].vowels == 2);
    CHECK(among[1].above[0]->value ==
          doctest::Approx(600 * (std::log2(290.0 / 270) + std::log2(720.0 / 660))));
    CHECK_FALSE(among[0].above[2]);
    CHECK(place_among(singer(VoiceType::other, {{"y", 290, 1700}}), voices).empty());
}

// Tract lengths of men and women, 16.9 and 14.1 cm: Stevens (1998). Means of F3 and F4 over men and women:
// Hillenbrand et al. (1995), table V, a few vowels. One man's tract of 15.9 to 18.3 cm with the natural F3 of
// his vowels: Story, Titze & Hoffman (1996), table IV.
TEST_CASE("the tract length follows from the upper resonances") {
    auto const men = singer(VoiceType::other, {{"i", 342, 2322, 3000, 3657},
                                               {"ɪ", 427, 2034, 2684, 3618},
                                               {"ɛ", 580, 1799, 2605, 3677},
                                               {"ɑ", 768, 1333, 2522, 3687},
                                               {"o", 497, 910, 2459, 3384},
                                               {"u", 378, 997, 2343, 3357}});
    auto const women = singer(VoiceType::other, {{"i", 437, 2761, 3372, 4352},
                                                 {"ɪ", 483, 2365, 3053, 4334},
                                                 {"ɛ", 731, 2058, 2979, 4294},
                                                 {"ɑ", 936, 1551, 2815, 4299},
                                                 {"o", 555, 1035, 2828, 3927},
                                                 {"u", 459, 1105, 2735, 4115}});
    auto const story = singer(VoiceType::other, {{"i", 333, 2332, 2986},
                                                 {"ɛ", 624, 1853, 2475},
                                                 {"æ", 692, 1873, 2463},
                                                 {"ɑ", 754, 1195, 2685},
                                                 {"ʌ", 707, 1161, 2591},
                                                 {"ɔ", 654, 944, 2739},
                                                 {"ʊ", 541, 1045, 2568},
                                                 {"u", 389, 987, 2299}});
    auto const cm = [](Singer const& s) { return in_centimetres(tract_length_of(s, {})->length); };
    CHECK(std::abs(cm(men) - 16.9) < 0.8);
    CHECK(std::abs(cm(women) - 14.1) < 0.8);
    CHECK(std::abs(cm(story) - 17.2) < 0.8); // mean of the eight
    CHECK(tract_length_of(men, {})->from == TractLength::From::upper_resonances);

    auto given = men;
    given.tract_length = 18_cm;
    CHECK(in_centimetres(tract_length_of(given, {})->length) == doctest::Approx(18));
    CHECK_FALSE(tract_length_of(given, {})->sd);

    // Without upper resonances: by comparison. A tenth shorter than the reference by uniform scaling.
    auto reference = singer(VoiceType::tenor, {{"i", 290, 2220}, {"a", 720, 1310}});
    reference.tract_length = 16_cm;
    double const f = std::pow(16 / 14.4, 0.83);
    auto const shorter = singer(VoiceType::other, {{"i", 290 * f, 2220 * f}, {"a", 720 * f, 1310 * f}});
    auto const found = tract_length_of(shorter, std::span(&reference, 1));
    REQUIRE(found);
    CHECK(found->from == TractLength::From::average_voices);
    CHECK(in_centimetres(found->length) == doctest::Approx(14.4));
    CHECK_FALSE(tract_length_of(shorter, {}));
}
