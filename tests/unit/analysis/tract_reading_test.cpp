// SPDX-License-Identifier: MIT
#include "vowelway/analysis/tract_reading.hpp"

#include "vowelway/analysis/check.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace vowelway;
using namespace vowelway::analysis;

namespace {
FormantReading heard(double f1, double f2, double f3, double sd) {
    FormantReading r;
    r.formants = {Formant{hertz(f1), hertz(sd), hertz(80)}, Formant{hertz(f2), hertz(sd), hertz(90)},
                  Formant{hertz(f3), hertz(sd), hertz(120)}};
    return r;
}
} // namespace

TEST_CASE("Swerdlin, Smith & Wolfe (2010): whisper 955 and 1215 Hz are 700 +- 90 and 1100 +- 105, creak 745 "
          "is 700 +- 50") {
    auto const w = tract_reading(heard(955, 1215, 2625, 1), parse_vowel("a"), ProbeKind::whisper,
                                 published_shift(ProbeKind::whisper));
    REQUIRE(w.resonances[0]);
    CHECK(in_hertz(w.resonances[0]->centre) == doctest::Approx(700).epsilon(0.001));
    CHECK(in_hertz(w.resonances[0]->sd) == doctest::Approx(90).epsilon(0.01));
    CHECK(in_hertz(w.resonances[1]->centre) == doctest::Approx(1100));
    CHECK(in_hertz(w.resonances[1]->sd) == doctest::Approx(105).epsilon(0.01));
    CHECK(in_hertz(w.resonances[2]->centre) == doctest::Approx(2500));
    CHECK(!w.close_whisper);
    auto const c = tract_reading(heard(745, 1215, 2625, 1), parse_vowel("a"), ProbeKind::creak,
                                 published_shift(ProbeKind::creak));
    CHECK(in_hertz(c.resonances[0]->centre) == doctest::Approx(700).epsilon(0.001));
    CHECK(in_hertz(c.resonances[0]->sd) == doctest::Approx(50).epsilon(0.01));
}

TEST_CASE("the deviation left at 700 Hz is 2.2 semitones for a whisper and 1.2 for a creak (from the same "
          "paper's figures)") {
    auto const w = tract_reading(heard(955, 1500, 2625, 1), parse_vowel("a"), ProbeKind::whisper,
                                 published_shift(ProbeKind::whisper));
    auto const c = tract_reading(heard(745, 1500, 2625, 1), parse_vowel("a"), ProbeKind::creak,
                                 published_shift(ProbeKind::creak));
    CHECK(in_semitones(w.resonances[0]->sd_cents()) == doctest::Approx(2.1).epsilon(0.05));
    CHECK(in_semitones(c.resonances[0]->sd_cents()) == doctest::Approx(1.2).epsilon(0.05));
}

TEST_CASE("fR1 stays above what walls allow: half of a normal distribution has mean 0.7979 and deviation "
          "0.6028 (handbook)") {
    auto shifts = published_shift(ProbeKind::creak);
    auto const r = tract_reading(heard(245, 2300, 3000, 0.001), parse_vowel("i"), ProbeKind::creak,
                                 shifts); // 245 - 45 = 200
    CHECK(in_hertz(r.resonances[0]->centre) == doctest::Approx(200 + 50 * 0.79788).epsilon(1e-4));
    CHECK(in_hertz(r.resonances[0]->sd) == doctest::Approx(50 * 0.60281).epsilon(1e-3));
}

TEST_CASE("a whispered close vowel is flagged and its fR1 is hardly known, an open one is not") {
    auto const i = tract_reading(heard(430, 2400, 3100, 5), parse_vowel("i"), ProbeKind::whisper,
                                 published_shift(ProbeKind::whisper));
    CHECK(i.close_whisper);
    CHECK(in_hertz(i.resonances[0]->sd) > 60);
    CHECK(is_close(parse_vowel("u")));
    CHECK(is_close(parse_vowel("ɪ")));
    CHECK(!is_close(parse_vowel("e")));
}

TEST_CASE("one vowel whispered and creaked: the Gaussian update worked by hand") {
    auto whisper = published_shift(ProbeKind::whisper), creak = published_shift(ProbeKind::creak);
    // F1: prior difference 255 - 45 = 210; found 310: surprise 100. Variances of the singers' means 4050 and
    // 1250, of the vowels the same, of the readings 100 + 100: total 10800.
    learn_shifts(whisper, creak, {{heard(910, 1500, 2600, 10), heard(600, 1400, 2500, 10)}});
    CHECK(in_hertz(whisper.of[0].mean) == doctest::Approx(255 + 100 * 4050.0 / 10800));
    CHECK(in_hertz(creak.of[0].mean) == doctest::Approx(45 - 100 * 1250.0 / 10800));
    CHECK(in_hertz(whisper.of[0].singer_sd) == doctest::Approx(std::sqrt(4050 * (1 - 4050.0 / 10800))));
    CHECK(whisper.pairs == 1);
    CHECK(creak.pairs == 1);
}

TEST_CASE("many pairs: the difference of the two shifts becomes the singer's own, what cannot be told apart "
          "keeps its prior") {
    auto whisper = published_shift(ProbeKind::whisper), creak = published_shift(ProbeKind::creak);
    std::vector<ProbePair> pairs(200, {heard(800, 1500, 2600, 5), heard(700, 1480, 2550, 5)});
    learn_shifts(whisper, creak, pairs);
    CHECK(in_hertz(whisper.of[0].mean - creak.of[0].mean) == doctest::Approx(100).epsilon(0.03));
    // along the sum both move by the ratio of the prior variances: 110 Hz of surprise shared 4050 : 1250
    CHECK(in_hertz(whisper.of[0].mean) == doctest::Approx(255 - 110 * 4050.0 / 5300).epsilon(0.02));
    CHECK(in_hertz(whisper.of[0].singer_sd) > 25);
}

TEST_CASE(
    "a change is told in semitones and deviations, the same kind of probe is compared sound with sound") {
    MeasuredVowel v;
    v.vowel = parse_vowel("a");
    v.measured = heard(840, 1300, 2500, 5);
    v.tract.resonances = {
        Resonance{hertz(585), hertz(90), false, {}}, Resonance{hertz(1185), hertz(105), false, {}}, {}};
    Aim aim;
    aim.tract = {
        Resonance{hertz(700), hertz(90), false, {}}, Resonance{hertz(1100), hertz(105), false, {}}, {}};
    auto const apart = compare_with(v, aim);
    CHECK(in_semitones(apart.resonances[0]->distance) == doctest::Approx(12 * std::log2(585.0 / 700)));
    CHECK(apart.resonances[0]->in_sds == doctest::Approx(-115 / std::sqrt(2 * 8100.0)));
    CHECK(apart.verdict == Verdict::unclear);
    aim.heard = {hertz(955), hertz(1300), {}};
    auto const same = compare_with(v, aim);
    CHECK(same.resonances[0]->same_probe);
    CHECK(same.verdict == Verdict::moved);
    CHECK(in_semitones(same.resonances[0]->distance) == doctest::Approx(12 * std::log2(840.0 / 955)));
}

TEST_CASE("a trend is a straight line through log frequency: a semitone in four weeks") {
    std::vector<DatedValue> values;
    for (int week = 0; week <= 4; ++week)
        values.push_back(
            {7.0 * week, hertz(700 * std::exp2(week / 48.0)), hertz(7 * std::exp2(week / 48.0))});
    auto const t = trend_of(values);
    REQUIRE(t);
    CHECK(t->per_week.value == doctest::Approx(25));
    // equal weights: variance of the slope = var / sum (w - mean)^2 = var / 10; 1 % is 17.3 cents
    CHECK(t->per_week_sd.value == doctest::Approx(17.31 / std::sqrt(10.0)).epsilon(0.01));
    CHECK(t->clear());
    auto odd = values; // steady for three weeks, then a day a tone and a half higher
    for (auto& v : odd) v.centre = hertz(700), v.sd = hertz(7);
    odd.back().centre = hertz(830);
    auto const day = trend_of(odd);
    REQUIRE(day);
    CHECK(day->per_week.value > 50);
    CHECK(!day->clear());
    CHECK(day->without_one < 0.1);
    CHECK(!trend_of({odd[2], odd[3], odd[4]})->clear());
    CHECK(!trend_of({values[0], values[1]}));
    CHECK(!trend_of({values[0], values[0], values[0]}));
    CHECK(*day_number("1970-01-31") == 30);
    CHECK(!day_number("2026-02-30"));
    CHECK(!day_number("yesterday"));
}
