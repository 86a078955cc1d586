// SPDX-License-Identifier: MIT
// What phone and desk do to takes whose formants are known (cascades of resonators; men of Peterson & Barney
// 1952): recognised, and the truth still in the interval. The filters are written here: the reflection by the
// definition, the high-pass after the bilinear transform of Butterworth's (any book on digital filters).
#include "analysis/read_undone.hpp"
#include "analysis/unrest.hpp"
#include "support/takes.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <functional>

using namespace vowelway;
using namespace vowelway::analysis;
using Kind = ProcessingFound::Kind;

namespace {

using Filter = std::function<takes::make::Samples(takes::make::Samples)>;

struct Trial {
    Measurements measured;
    std::vector<std::array<double, 3>> truths;
};

Trial trial(ProbeKind kind, double rate, unsigned seed, Filter const& filter) {
    std::mt19937 random(seed);
    std::vector<takes::make::Samples> all;
    Trial t;
    for (auto const& man : takes::men) {
        all.push_back(takes::take(man, kind, rate, random));
        if (kind == ProbeKind::whisper) all.back() = takes::make::breathed(std::move(all.back()));
        bool const close = man.vowel == "i" || man.vowel == "u";
        auto const& f = man.formants;
        t.truths.push_back(kind == ProbeKind::whisper
                               ? std::array<double, 3>{f[0] + (close ? 153 : 255), f[1] + 115, f[2] + 125}
                               : f);
    }
    t.measured = measure({takes::heard(filter(takes::together(all, 40, random)))}, takes::request());
    return t;
}

bool says(Trial const& t, Kind kind) {
    auto const& of_first = t.measured.processing.at(0);
    return std::any_of(of_first.begin(), of_first.end(),
                       [&](ProcessingFound const& p) { return p.kind == kind; });
}

/// Takes whose F1 and F2 lie within three deviations of the truth (99.7 % of an honest normal one).
int held(Trial const& t) {
    int n = 0;
    for (std::size_t i = 0; i < t.truths.size(); ++i) {
        auto const& take = t.measured.takes.at(i);
        bool all = take.usable();
        for (std::size_t k = 0; all && k < 2; ++k)
            all = std::abs(in_hertz(take.measured.formants[k]->centre) - t.truths[i][k]) <
                  3 * in_hertz(take.measured.formants[k]->sd);
        n += all;
    }
    return n;
}

takes::make::Samples plain(takes::make::Samples x) { return x; }

/// A whole number of samples: 14 are 0.875 ms.
Filter desk(std::size_t delay, double gain) {
    return [=](takes::make::Samples x) {
        for (std::size_t n = x.size(); n-- > delay;) x[n] += gain * x[n - delay];
        return x;
    };
}

takes::make::Samples high_pass_300(takes::make::Samples x) {
    double const w = 2 * takes::make::pi * 300 / 16000, a = std::sin(w) / std::sqrt(2.0), c = std::cos(w);
    double x1 = 0, x2 = 0, y1 = 0, y2 = 0;
    for (auto& v : x) {
        double const y = ((1 + c) / 2 * (v - 2 * x1 + x2) + 2 * c * y1 - (1 - a) * y2) / (1 + a);
        x2 = x1, x1 = v, y2 = y1, y1 = y;
        v = y;
    }
    return x;
}

/// 18 dB over half of full scale, the level followed in 0.5 ms and let go in 15.
takes::make::Samples limiter(takes::make::Samples x) {
    double most = 0, level = 0;
    for (double v : x) most = std::max(most, std::abs(v));
    for (auto& v : x) {
        v *= 4 / most;
        double const t = std::abs(v) > level ? 0.0005 : 0.015;
        level += (std::abs(v) - level) * (1 - std::exp(-1 / (16000 * t)));
        if (level > 0.5) v *= 0.5 / level;
    }
    return x;
}

} // namespace

TEST_CASE("nothing is said of a recording that nothing was done to") {
    for (unsigned seed : {1U, 2U, 3U}) {
        CHECK(trial(ProbeKind::whisper, 0, seed, plain).measured.processing.at(0).empty());
        CHECK(trial(ProbeKind::creak, 40, seed, plain).measured.processing.at(0).empty());
        CHECK(trial(ProbeKind::sung, 110, seed, plain).measured.processing.at(0).empty());
    }
}

TEST_CASE("a reflection from the desk is heard and taken out") {
    for (auto const kind : {ProbeKind::whisper, ProbeKind::creak, ProbeKind::sung})
        for (std::size_t delay : {14U, 22U}) {
            auto const t = trial(kind, kind == ProbeKind::creak ? 40 : 110, 4, desk(delay, 0.33));
            CAPTURE(to_string(kind));
            CAPTURE(delay);
            CHECK(says(t, Kind::reflection));
            CHECK(held(t) == 5);
        }
    auto const t = trial(ProbeKind::whisper, 0, 5, desk(14, 0.33));
    for (std::size_t i = 0; i < t.truths.size(); ++i) // within 3 %: it was 13 % off
        CHECK(in_hertz(t.measured.takes[i].measured.formants[0]->centre) ==
              doctest::Approx(t.truths[i][0]).epsilon(0.03));
}

TEST_CASE("low frequencies that were cut are made good") {
    for (auto const kind : {ProbeKind::whisper, ProbeKind::creak, ProbeKind::sung}) {
        auto const t = trial(kind, kind == ProbeKind::creak ? 40 : 110, 6, high_pass_300);
        CAPTURE(to_string(kind));
        CHECK(says(t, Kind::low_cut));
        CHECK(held(t) >= 3);                      // of five; seven of ten are read in measure_phones, sung
        for (auto const& take : t.measured.takes) // what is not held is not said either
            if (!take.usable()) CHECK(take.refused.find("not clear") != std::string::npos);
        auto const given = std::count_if(t.measured.takes.begin(), t.measured.takes.end(),
                                         [](Take const& take) { return take.usable(); });
        CHECK(held(t) == given);
    }
}

TEST_CASE("of what making a low cut good moves all stays open in a whisper, half in pulses") {
    for (auto const kind : {ProbeKind::whisper, ProbeKind::creak, ProbeKind::sung}) {
        FormantReading raw, undone;
        raw.formants[0] = Formant{hertz(300), hertz(5), hertz(90)};
        undone.formants[0] = Formant{hertz(350), hertz(5), hertz(90)};
        auto without = undone;
        Processing p;
        p.kind = kind;
        widen(without, raw, p);
        p.low_cut = LowCut{hertz(300), 4};
        widen(undone, raw, p);
        double const with = in_hertz(undone.formants[0]->sd), plain = in_hertz(without.formants[0]->sd);
        CAPTURE(to_string(kind));
        CHECK(std::sqrt(with * with - plain * plain) ==
              doctest::Approx(kind == ProbeKind::whisper ? 50 : 25).epsilon(0.001));
    }
}

TEST_CASE("a creak that a gain control has evened out is wide enough to be true") {
    for (unsigned seed : {7U, 8U}) {
        auto const t = trial(ProbeKind::creak, 40, seed, takes::make::fast_gain);
        CHECK(says(t, Kind::levelled));
        CHECK(held(t) >= 4);
    }
}

TEST_CASE("a limiter on sung takes is named by bandwidths that scatter as no tract's do, and only there") {
    int named = 0;
    for (unsigned seed = 1; seed <= 8; ++seed) {
        double const pitch = 80 + 10 * seed;
        CAPTURE(pitch);
        auto const clean = trial(ProbeKind::sung, pitch, seed, plain);
        CHECK(clean.measured.processing.at(0).empty());
        named += says(trial(ProbeKind::sung, pitch, seed, limiter), Kind::limited);
    }
    CHECK(named >= 4); // bench/measure_phones.cpp: three of four
}

TEST_CASE("a level as even as a gain control leaves it is said once, without a claim that it was one") {
    Processing p;
    CHECK(told(p).empty());
    p.evenness = Evenness::like_levelled;
    auto const all = told(p);
    REQUIRE(all.size() == 1);
    CHECK(all[0].kind == Kind::even);
    CHECK(all[0].tries.rfind("if ", 0) == 0);
}

TEST_CASE("a whisper that a fast gain control has evened out is known by its samples, and wide enough") {
    for (unsigned seed : {7U, 8U}) {
        auto const t = trial(ProbeKind::whisper, 0, seed, takes::make::fast_gain);
        CHECK((says(t, Kind::levelled) || says(t, Kind::even)));
        CHECK(held(t) >= 4);
        for (auto const& take : t.measured.takes) CHECK(!take.measured.noise_in_front);
    }
}

TEST_CASE("even noise is restless by Euler's constant, noise that is let through by turns by far more") {
    std::mt19937 random(3);
    auto const noise = takes::make::white(16000, random);
    std::vector<float> even(noise.begin(), noise.end()), by_turns(even.size(), 0.0F);
    CHECK(pause_of(even, hertz(16000)).unrest == doctest::Approx(0.577).epsilon(0.15));
    std::bernoulli_distribution open(0.2);
    for (int tone = 0; tone < 120; ++tone) // each alone, let through for 60 ms or not
        for (std::size_t from = 0; from < even.size(); from += 960) {
            double const loud = open(random) ? 1 : 0.05;
            for (std::size_t n = from; n < std::min(from + 960, even.size()); ++n)
                by_turns[n] += static_cast<float>(loud * std::sin(2 * takes::make::pi * (255 + 31.25 * tone) *
                                                                  static_cast<double>(n) / 16000));
        }
    CHECK(pause_of(by_turns, hertz(16000)).unrest > 0.85);
}

TEST_CASE("what is found is told, with what to do") {
    auto const t = trial(ProbeKind::whisper, 0, 9, desk(14, 0.33));
    bool told = false;
    for (auto const& r : t.measured.remarks)
        told = told ||
               (r.kind == Remark::Kind::caution && r.text.find("away from the table") != std::string::npos);
    CHECK(told);
}
