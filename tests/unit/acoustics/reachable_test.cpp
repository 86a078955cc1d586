// SPDX-License-Identifier: MIT
#include "acoustics/mouth.hpp"
#include "acoustics/published_tracts.hpp"
#include "acoustics/series_tube.hpp"
#include "unit/acoustics/tables.hpp"
#include "vowelway/acoustics/reachable.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cmath>

using namespace vowelway;
using namespace vowelway::acoustics;
using doctest::Approx;

namespace {

VowelResonances vowel(char const* ipa, double r1, double r2) {
    VowelResonances v;
    v.vowel = parse_ipa(ipa);
    v.r1.centre = hertz(r1);
    v.r2.centre = hertz(r2);
    return v;
}

// Means of Hillenbrand et al. 1995; 14.7 and 17.3 cm are the lengths that go with their mean F4.
std::vector<VowelResonances> women() {
    return {vowel("i", 437, 2761), vowel("e", 536, 2530), vowel("ɛ", 731, 2058), vowel("ɑ", 936, 1551),
            vowel("ɔ", 781, 1136), vowel("o", 555, 1035), vowel("u", 459, 1105)};
}
std::vector<VowelResonances> men() {
    return {vowel("i", 342, 2322), vowel("e", 476, 2089), vowel("ɛ", 580, 1799), vowel("ɑ", 768, 1333),
            vowel("ɔ", 652, 997),  vowel("o", 497, 910),  vowel("u", 378, 997)};
}

double part(Shape const& s, GesturePart p) { return s.gesture[static_cast<std::size_t>(p)]; }

} // namespace

TEST_CASE("home is the vowel as measured, without gesture or effort") {
    for (auto const& v : men()) {
        ReachableSet const set(v, 17.3_cm);
        CHECK(set.home().resonances.r1() == v.r1.centre);
        CHECK(set.home().resonances.r2() == v.r2.centre);
        CHECK(set.home().effort == 0);
        CHECK(set.at(0, 0) == &set.home());
        CHECK(set.objection().empty());
    }
}

TEST_CASE("every shape is where the grid says, in order, and can be made") {
    for (auto const& v : women()) {
        CAPTURE(v.vowel.ipa());
        ReachableSet const set(v, 14.7_cm);
        CHECK(set.shapes().size() > 40);
        for (int i = set.lowest_i(); i <= set.highest_i(); ++i)
            for (int j = -set.highest_j(); j <= set.highest_j(); ++j) {
                auto const* shape = set.at(i, j);
                if (!shape) continue;
                auto const off1 =
                    interval(set.home().resonances.r1(), shape->resonances.r1()) - set.step() * i;
                auto const off2 =
                    interval(set.home().resonances.r2(), shape->resonances.r2()) - set.step() * j;
                CHECK(std::abs(off1.value) < 0.25 * set.step().value);
                CHECK(std::abs(off2.value) < 0.25 * set.step().value);
                for (std::size_t k = 1; k < 4; ++k)
                    CHECK(shape->resonances.peaks[k].centre > shape->resonances.peaks[k - 1].centre);
                for (double g : shape->gesture) CHECK(std::abs(g) <= 1);
                CHECK(shape->compliant_to >= shape->resonances.r1());
            }
        CHECK(set.at(99, 0) == nullptr);
    }
}

TEST_CASE("sopranos raise fR1 of every vowel to where they are measured to tune it") {
    // Joliveau, Smith & Wolfe 2004 and Garnier et al. 2010: fR1 follows fo up to about C6 (1047 Hz) and D6;
    // fR1 ends near 1300 Hz. The model brings front and open vowels there, close back ones to about 800 Hz.
    for (auto const& v : women()) {
        CAPTURE(v.vowel.ipa());
        ReachableSet const set(v, 14.7_cm);
        double highest = 0;
        for (auto const& s : set.shapes()) highest = std::max(highest, s.resonances.r1().value());
        bool const back = chart_place(v.vowel).backness > 1.5 && chart_place(v.vowel).height < 5;
        CHECK(highest > (back ? 790 : 1000));
        CHECK(highest < 1330);
    }
    CHECK(highest_r1(quarter_wave(14.7_cm)).value() < 1301);
    CHECK(highest_r1(quarter_wave(17.5_cm)).value() == Approx(1075));
}

TEST_CASE("raising fR1 is done by opening the jaw, lowering it by closing") {
    // Sundberg 1975; Lindblom & Sundberg 1971: jaw opening is the chief means of raising F1.
    for (auto const& list : {men(), women()})
        for (auto const& v : list) {
            CAPTURE(v.vowel.ipa());
            ReachableSet const set(v, list.front().r1.centre.value() > 400 ? 14.7_cm : 17.3_cm);
            if (auto const* up = set.at(2, 0)) {
                CHECK(part(*up, GesturePart::jaw) > 0.1);
                CHECK(part(*up, GesturePart::lip_opening) > 0);
            }
            if (auto const* down = set.at(-1, 0)) CHECK(part(*down, GesturePart::jaw) < 0);
        }
}

TEST_CASE("single gestures move resonances as tracings and models say") {
    // Lindblom & Sundberg 1971 (from memory), Fant 1960, and the rule that lengthening lowers all resonances.
    ReachableSet const set(vowel("ə", 500, 1500), 17.5_cm);
    // More fR1 with fR2 fixed comes from the mouth's opening; more fR2 with fR1 fixed from an advanced
    // tongue.
    auto const front = set.reach(500_Hz, 1750_Hz);
    REQUIRE(front);
    CHECK(part(*front, GesturePart::tongue_advancement) > 0.1);
    auto const back = set.reach(500_Hz, 1280_Hz);
    REQUIRE(back);
    CHECK(part(*back, GesturePart::tongue_advancement) < -0.1);
    // Both lower by the same share: what longer lips and a lower larynx do; the lips are the cheaper.
    auto const longer = set.reach(460_Hz, 1380_Hz);
    REQUIRE(longer);
    CHECK(part(*longer, GesturePart::lip_protrusion) > 0.05);
    CHECK(part(*longer, GesturePart::larynx) < 0);
}

TEST_CASE("a gesture does to the tract solved from resonances what it does to the real one") {
    // The eleven area functions of Story, Titze & Hoffman 1996 are bent as they are, and so are the tracts
    // solved from their first three resonances alone. The shifts of ln fR must agree: correlation and slope
    // over 132 gestures.
    struct Sums {
        double xx = 0, yy = 0, xy = 0;
    };
    GestureVector const least{-1, -1, -1, -1, -1, -1}, most{1, 1, 1, 1, 1, 1};
    auto const compare = [&](bool like) {
        std::array<Sums, 2> sums;
        for (auto const& [vowel, areas] : tables::area_functions("story1996_male.csv")) {
            tube::Tube real;
            double length = 0;
            for (auto const& section : areas) {
                real.length.push_back(in_centimetres(section.length));
                real.area.push_back(in_square_centimetres(section.area));
                length += in_centimetres(section.length);
            }
            auto const poles = tube::first_poles(real, 3);
            std::vector<double> targets;
            for (auto pole : poles) targets.push_back(tube::frequency_of(pole));
            auto const start = like ? tube::tract_like(parse_ipa(vowel)) : tube::mean_tract();
            auto const solved = tube::solve_series(targets, start, length, 0, TractLoss::closed_glottis);
            tube::Mouth const one(real, least, most), other(solved.tube, least, most);
            for (auto part : all_gesture_parts)
                for (double amount : {-0.3, 0.3}) {
                    GestureVector gesture{};
                    gesture[static_cast<std::size_t>(part)] = amount;
                    auto const a = tube::first_poles(one.shaped(gesture), 2),
                               b = tube::first_poles(other.shaped(gesture), 2);
                    for (std::size_t k = 0; k < 2; ++k) {
                        double const x = std::log(tube::frequency_of(a[k]) / targets[k]),
                                     y = std::log(tube::frequency_of(b[k]) / targets[k]);
                        sums[k].xx += x * x;
                        sums[k].yy += y * y;
                        sums[k].xy += x * y;
                    }
                }
        }
        return sums;
    };
    auto const correlation = [](Sums const& s) { return s.xy / std::sqrt(s.xx * s.yy); };
    auto const slope = [](Sums const& s) { return s.xy / s.xx; };
    // From the mean tract, knowing nothing of the vowel but its resonances.
    auto const blind = compare(false);
    CHECK(correlation(blind[0]) > 0.9);
    CHECK(correlation(blind[1]) > 0.7);
    CHECK(slope(blind[0]) == Approx(1).epsilon(0.15));
    CHECK(slope(blind[1]) == Approx(1).epsilon(0.2));
    // From a start towards the vowel's published tract, as ReachableSet does; fR2 gains.
    auto const knowing = compare(true);
    CHECK(correlation(knowing[0]) > 0.94);
    CHECK(correlation(knowing[1]) > 0.8);
}

TEST_CASE("effort grows with distance, about linearly at first") {
    ReachableSet const set(vowel("ɛ", 580, 1799), 17.3_cm);
    double const one = set.at(1, 0)->effort, two = set.at(2, 0)->effort, three = set.at(3, 0)->effort;
    CHECK(two / one == Approx(2).epsilon(0.15));
    CHECK(three / one == Approx(3).epsilon(0.2));
}

TEST_CASE("reach finds the target or says that there is no way") {
    ReachableSet const set(vowel("e", 476, 2089), 17.3_cm);
    auto const found = set.reach(611_Hz, 1950_Hz);
    REQUIRE(found);
    CHECK(found->resonances.r1().value() == Approx(611).epsilon(0.011));
    CHECK(found->resonances.r2().value() == Approx(1950).epsilon(0.011));
    CHECK_FALSE(set.reach(1400_Hz, 2000_Hz));
    CHECK_FALSE(set.reach(300_Hz, 700_Hz));
}

TEST_CASE("measured bandwidths are kept in proportion") {
    auto v = vowel("ɛ", 580, 1799);
    v.r1.bandwidth = 90_Hz;
    ReachableSet const set(v, 17.3_cm);
    CHECK(set.home().resonances.peaks[0].bandwidth == 90_Hz);
    auto const* up = set.at(3, 0);
    REQUIRE(up);
    double const model = bandwidth(BandwidthModel::swept_tone, up->resonances.r1()).value() /
                         bandwidth(BandwidthModel::swept_tone, 580_Hz).value();
    CHECK(up->resonances.peaks[0].bandwidth.value() == Approx(90 * model));
}

TEST_CASE("resonances that are no human tract are named, and nothing crashes") {
    ReachableSet const set(vowel("a", 1390, 1500), 19_cm);
    CHECK_FALSE(set.objection().empty());
    CHECK(set.home().resonances.r1() == 1390_Hz);
}

TEST_CASE("gestures in words, the largest first") {
    auto const said = describe({0.3, -0.05, 0, 0, 0.8, -0.5});
    REQUIRE(said.size() == 3);
    CHECK(said[0].words == "bring the tongue forward a good deal");
    CHECK(said[1].words == "let the larynx sink");
    CHECK(said[2].words == "open the jaw a little");
    CHECK(describe({}).empty());
}
