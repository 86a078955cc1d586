// SPDX-License-Identifier: MIT
#include "unit/acoustics/tables.hpp"
#include "vowelway/acoustics/hearing.hpp"
#include "vowelway/acoustics/scales.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <limits>

using namespace vowelway;
using namespace vowelway::acoustics;
using doctest::Approx;

namespace {

struct Known {
    char const* ipa;
    double f1, f2;
};
// Hillenbrand et al. 1995, means of their Table V.
constexpr std::array men{Known{"i", 342, 2322}, Known{"ɪ", 427, 2034}, Known{"e", 476, 2089},
                         Known{"ɛ", 580, 1799}, Known{"æ", 588, 1952}, Known{"ɑ", 768, 1333},
                         Known{"ɔ", 652, 997},  Known{"o", 497, 910},  Known{"ʊ", 469, 1122},
                         Known{"u", 378, 997},  Known{"ʌ", 623, 1200}};
constexpr std::array women{Known{"i", 437, 2761}, Known{"ɪ", 483, 2365}, Known{"e", 536, 2530},
                           Known{"ɛ", 731, 2058}, Known{"æ", 669, 2349}, Known{"ɑ", 936, 1551},
                           Known{"ɔ", 781, 1136}, Known{"o", 555, 1035}, Known{"ʊ", 519, 1225},
                           Known{"u", 459, 1105}, Known{"ʌ", 753, 1426}};
constexpr Frequency men_quarter = hertz(506), women_quarter = hertz(595); // mean F4/7 of the same study

template <class Table> VowelSpace space(Table const& table, Frequency quarter) {
    std::vector<std::pair<Vowel, ResonanceSet>> vowels;
    for (auto const& v : table)
        vowels.emplace_back(parse_ipa(v.ipa), resonance_set(hertz(v.f1), hertz(v.f2), quarter));
    return VowelSpace(vowels, quarter);
}

std::size_t index_of(VowelSpace const& s, char const* ipa) {
    auto const vowel = parse_ipa(ipa);
    for (std::size_t k = 0; k < s.entries().size(); ++k)
        if (s.entries()[k].vowel == vowel) return k;
    FAIL("no such vowel");
    return 0;
}

HeardPlace sung(VowelSpace const& s, std::size_t vowel, double fo) {
    return heard_place(NoteSpectrum(Pitch(hertz(fo)), s.quarter()), s.entries()[vowel].shape);
}

// Mean probability of recognition of all vowels sung at fo, each in its spoken shape.
double recognition(VowelSpace const& s, double fo) {
    double sum = 0;
    for (std::size_t k = 0; k < s.entries().size(); ++k) sum += s.recognised(sung(s, k, fo), k);
    return sum / static_cast<double>(s.entries().size());
}

} // namespace

TEST_CASE("the step from non-high to high lies where F1 is 3 to 3.5 Bark above fo") {
    // Hoemeke & Diehl 1994, J. Acoust. Soc. Am. 96, 661.
    Pitch const fo(130_Hz);
    double const full = high_vowel_shift({1}, fo).value;
    CHECK(full > 0);
    CHECK(high_vowel_shift({2.5}, fo).value == Approx(full));
    CHECK(high_vowel_shift({4}, fo).value == 0);
    // Half of the step within the published interval.
    CHECK(high_vowel_shift({3}, fo).value > full / 2);
    CHECK(high_vowel_shift({3.5}, fo).value < full / 2);
    // The pitches at which F1 is 3 and 3.5 Bark above fo, on Traunmüller's scale: 195.8 and 145.0 Hz for F1 =
    // 500 Hz, 349.3 and 299.7 Hz for 700 Hz.
    for (auto [f1, three, more] : {std::array{500.0, 195.79, 144.99},
                                   {600, 273.56, 227.08},
                                   {700, 349.30, 299.65},
                                   {850, 461.52, 406.99}}) {
        CHECK((bark(hertz(f1)) - bark(hertz(three))).value == Approx(3).epsilon(1e-3));
        CHECK((bark(hertz(f1)) - bark(hertz(more))).value == Approx(3.5).epsilon(1e-3));
    }
}

TEST_CASE("spoken vowels of Hillenbrand et al. 1995 are classified as well as published discriminants do") {
    // Hillenbrand et al. 1995 (from memory): F1 and F2 at one point gave 68..72 % of twelve vowels by
    // quadratic discriminants, listeners 95 %. Here: the nearest mean place of the speaker's group (men,
    // women, boys, girls), the utterance itself left out of its mean, each heard at its own fo from its
    // harmonics alone.
    struct Token {
        std::string vowel;
        HeardPlace place;
    };
    std::map<std::string, std::vector<Token>> groups;
    for (auto const& u : tables::utterances()) {
        if (u.f1 == 0 || u.f2 == 0 || u.fo == 0 || u.vowel == "ɝ") continue;
        auto const quarter = u.group == "m" ? men_quarter : u.group == "w" ? women_quarter : hertz(614);
        auto shape = resonance_set(hertz(u.f1), hertz(u.f2), quarter);
        if (u.f3 > u.f2 + 50) shape.peaks[2].centre = hertz(u.f3);
        groups[u.group].push_back({u.vowel, heard_place(NoteSpectrum(Pitch(hertz(u.fo)), quarter), shape)});
    }
    int right = 0, all = 0;
    for (auto const& [group, tokens] : groups) {
        struct Sum {
            HeardPlace total;
            double count = 0;
        };
        std::map<std::string, Sum> sums;
        for (auto const& t : tokens) {
            auto& s = sums[t.vowel];
            s.total = {s.total.openness + t.place.openness, s.total.front + t.place.front};
            ++s.count;
        }
        for (auto const& t : tokens) {
            std::string best;
            double least = std::numeric_limits<double>::infinity();
            for (auto const& [vowel, s] : sums) {
                bool const own = vowel == t.vowel;
                double const n = s.count - (own ? 1 : 0);
                HeardPlace const mean{(s.total.openness - (own ? t.place.openness : Bark{})) / n,
                                      (s.total.front - (own ? t.place.front : Bark{})) / n};
                if (double const d = distance(t.place, mean).value; d < least) {
                    least = d;
                    best = vowel;
                }
            }
            right += best == t.vowel;
            ++all;
        }
    }
    CHECK(all > 1500);
    CHECK(right >= 0.70 * all);
}

TEST_CASE("a vowel sung low is heard as itself") {
    auto const s = space(men, men_quarter);
    for (std::size_t k = 0; k < s.entries().size(); ++k)
        for (double fo : {98.0, 110.0, 131.0, 147.0}) {
            CAPTURE(s.entries()[k].vowel.ipa());
            CAPTURE(fo);
            auto const heard = s.hear(sung(s, k, fo), k);
            CHECK(heard.vowel.base == s.entries()[k].vowel.base);
            CHECK(heard.distance.value < 0.5);
        }
    CHECK(recognition(s, 120) > 0.75);
}

TEST_CASE("once 2fo has passed fR1 the vowel is heard closer, and opens again when fo passes it") {
    // A listening test with 63 listeners and synthetic vowels found a lower perceived F1 where the second
    // harmonic crosses F1 (published summary, from memory); "closing" after the turn is common practice, no
    // source.
    auto const test = [](VowelSpace const& s) {
        for (auto const* ipa : {"ɛ", "æ", "ɑ", "ɔ", "ʌ"}) {
            auto const k = index_of(s, ipa);
            double const r1 = s.entries()[k].shape.r1().value();
            double const own = s.entries()[k].spoken.openness.value;
            double lowest = 0;
            for (double share = 0.55; share < 0.95; share += 0.02) // 2fo from 1.1 to 1.9 fR1
                lowest = std::min(lowest, sung(s, k, share * r1).openness.value - own);
            CAPTURE(ipa);
            CHECK(lowest < -0.5);
            CHECK(lowest > -2.5);
            CHECK(sung(s, k, 1.4 * r1).openness.value > own);
        }
    };
    test(space(men, men_quarter));
    test(space(women, women_quarter));
    // And in words: a man's /ɑ/ around fo = 0.8 fR1 is named as something closer.
    auto const s = space(men, men_quarter);
    auto const a = index_of(s, "ɑ");
    auto const heard = s.hear(sung(s, a, 0.8 * 768), a).vowel;
    CHECK(chart_place(heard).height < chart_place(parse_ipa("ɑ")).height);
}

TEST_CASE("at the top vowels merge and are heard open") {
    // Sung by a soprano at A5 (880 Hz) every vowel was heard as an open one (published summary of a study
    // with trained listeners; science behind it: no harmonic lies below fo).
    auto const s = space(women, women_quarter);
    double const open = s.entries()[index_of(s, "ɛ")].spoken.openness.value;
    for (std::size_t k = 0; k < s.entries().size(); ++k) {
        auto const place = sung(s, k, 880);
        CHECK(place.openness.value > open);
        CHECK(chart_place(s.hear(place, k).vowel).height >= 4);
    }
    auto const i = index_of(s, "i"), ae = index_of(s, "æ");
    CHECK(std::abs((sung(s, i, 880).openness - sung(s, ae, 880).openness).value) < 0.5);
}

TEST_CASE("recognition falls with pitch as listening tests report") {
    // Summary of the positions (Maurer 2014): about 80 % up to 500 Hz, 50 % up to 650 Hz except /a/; four
    // women at 220, 392, 660, 880 Hz: a dramatic drop (Bloothooft 1994); isolated front vowels of an operatic
    // soprano, 56 % at C#5 (554 Hz), 16 % at F5 (698 Hz) (Smith & Scott 1980). Chance is 9 %. Order of size
    // only.
    auto const s = space(women, women_quarter);
    CHECK(recognition(s, 220) > 0.75);
    CHECK(recognition(s, 392) > 0.65);
    double const at_c5 = recognition(s, 523), at_e5 = recognition(s, 660), at_a5 = recognition(s, 880);
    CHECK(at_c5 > 0.4);
    CHECK(at_c5 < 0.8);
    CHECK(at_e5 > 0.2);
    CHECK(at_e5 < 0.6);
    CHECK(at_a5 < 0.4);
    CHECK(recognition(s, 220) > at_c5);
    CHECK(at_c5 > at_e5);
    double front = 0;
    for (auto const* ipa : {"i", "ɪ", "e", "ɛ"}) {
        auto const k = index_of(s, ipa);
        front += s.recognised(sung(s, k, 698), k) / 4;
    }
    CHECK(front < 0.4);
}

TEST_CASE("the heard first peak is never below fo") {
    // Openness is that peak but for the two shifts, of which high_vowel_shift() is 0.2 Bark at most.
    auto const s = space(women, women_quarter);
    for (std::size_t k = 0; k < s.entries().size(); ++k)
        for (double fo = 100; fo < 1500; fo *= 1.03) {
            auto const place = sung(s, k, fo);
            auto const shift = pitch_shift(bark(hertz(fo)), bark(low_voice(s.quarter()).frequency()),
                                           bark(s.entries()[k].shape.r1()));
            CHECK((place.openness + shift).value + 0.201 >= bark(hertz(fo)).value);
            CHECK(place.front >= place.openness);
            CHECK(std::isfinite(place.front.value));
        }
}

TEST_CASE("heard places move without jumps") {
    // What an optimiser compares must be continuous: 5 cents never move a vowel by more than 0.4 Bark
    // (steepest where fo enters the region of a back vowel's second peak).
    auto const s = space(men, men_quarter);
    for (std::size_t k = 0; k < s.entries().size(); ++k) {
        auto before = sung(s, k, 100);
        for (double fo = 100; fo < 1200; fo *= std::exp2(5.0 / 1200)) {
            auto const here = sung(s, k, fo);
            CHECK(distance(before, here).value < 0.4);
            before = here;
        }
    }
}

TEST_CASE("shades name the way from a vowel to a shape") {
    std::vector<std::pair<Vowel, ResonanceSet>> few;
    for (auto const& v : men)
        for (auto const* kept : {"i", "e", "ɛ", "ɑ", "ɔ", "o", "u"})
            if (std::string(v.ipa) == kept)
                few.emplace_back(parse_ipa(v.ipa), resonance_set(hertz(v.f1), hertz(v.f2), men_quarter));
    VowelSpace const s(few, men_quarter);
    auto const shade = [&](char const* from, double f1, double f2) {
        return s.shade_of(resonance_set(hertz(f1), hertz(f2), men_quarter), index_of(s, from)).ipa();
    };
    // At home a vowel is itself.
    for (auto const& [vowel, shape] : few)
        CHECK(s.shade_of(shape, index_of(s, vowel.ipa().c_str())).ipa() == vowel.ipa());
    // A man's /ɪ/ (427, 2034 Hz), though this singer has none of his own, lies between his /i/ and /e/.
    auto const between = s.shade_of(resonance_set(427_Hz, 2100_Hz, men_quarter), index_of(s, "i"));
    auto const height = chart_place(between).height;
    CHECK(height > 0);
    CHECK(height <= 2);
    CHECK(chart_place(between).backness < 1);
    // Opened, /ɛ/ is called lower or by an opener vowel.
    auto const opened =
        chart_place(s.shade_of(resonance_set(680_Hz, 1750_Hz, men_quarter), index_of(s, "ɛ")));
    CHECK(opened.height > chart_place(parse_ipa("ɛ")).height);
    // Closed, /ɔ/ goes the way of /o/; never to an unrounded one.
    auto const closed = s.shade_of(resonance_set(560_Hz, 940_Hz, men_quarter), index_of(s, "ɔ"));
    CHECK(chart_place(closed).height < chart_place(parse_ipa("ɔ")).height);
    CHECK(chart_place(closed).rounding > 0.5);
    CHECK(shade("o", 497, 910) == "o");
}

TEST_CASE("marks of the intended vowel are kept") {
    std::vector<std::pair<Vowel, ResonanceSet>> const nasal{
        {parse_ipa("ɑ̃"), resonance_set(700_Hz, 1100_Hz, men_quarter)},
        {parse_ipa("ɔ"), resonance_set(550_Hz, 900_Hz, men_quarter)}};
    VowelSpace const s(nasal, men_quarter);
    CHECK(s.shade_of(resonance_set(700_Hz, 1100_Hz, men_quarter), 0).nasal);
    CHECK_FALSE(s.shade_of(resonance_set(550_Hz, 900_Hz, men_quarter), 1).nasal);
    CHECK_THROWS_AS(VowelSpace({}, men_quarter), std::invalid_argument);
}

TEST_CASE("speaking pitch follows size: Hillenbrand's groups") {
    CHECK(speaking_pitch(506_Hz).frequency().value() == Approx(131).epsilon(0.02));
    CHECK(speaking_pitch(595_Hz).frequency().value() == Approx(220).epsilon(0.02));
}
