// SPDX-License-Identifier: MIT
#include "plan/reading.hpp"
#include "vowelway/plan/pencil.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace vowelway;
using namespace vowelway::plan;

namespace {

VowelResonances known_vowel(char const* ipa, double r1, double r2) {
    VowelResonances v;
    v.vowel = parse_ipa(ipa);
    v.r1 = {.centre = hertz(r1), .sd = hertz(25), .bandwidth = {}};
    v.r2 = {.centre = hertz(r2), .sd = hertz(70), .bandwidth = {}};
    return v;
}

// Women of Hillenbrand et al. 1995.
Strategy soprano(Means const& means = {}) {
    Singer singer;
    singer.vowels = {known_vowel("i", 437, 2761), known_vowel("ɛ", 731, 2058), known_vowel("ɑ", 936, 1551),
                     known_vowel("u", 459, 1105)};
    return Strategy(singer, {}, singer.vowels, parse_pitch_range("C4..C6"), means);
}

Task sung(std::size_t vowel, double fo) { return {vowel, Pitch(hertz(fo)), {}, seconds(2), 0}; }

Decision read(Strategy const& strategy, Task const& task) {
    auto const choice = strategy.decide({task}, 20).choices.front();
    auto const terms = [&](std::size_t shape) {
        auto const heard = strategy.cost_of(task, shape);
        return CostTerms{
            .text = heard.text, .ring = heard.ring, .stability = heard.stability, .relation = heard.relation};
    };
    return read_decision(strategy, task, choice,
                         {.turning = Pitch(hertz(400)),
                          .from = {},
                          .heard = nullptr,
                          .kept = nullptr,
                          .cost_kept = terms(strategy.grid().home()),
                          .cost_planned = terms(choice.shape)});
}

} // namespace

TEST_CASE("a note far under the vowel's resonances is left alone, and the sentence says why") {
    auto const d = read(soprano(), sung(2, 262)); // C4 on /ɑ/
    CHECK(d.advice == Advice::hold);
    CHECK(d.zone.zone == Zone::open);
    CHECK(d.certainty == 1);
    CHECK(d.target.shade == parse_ipa("ɑ"));
    CHECK(d.target.r1.centre == hertz(936));
    CHECK(d.gestures.empty());
    CHECK(d.brief.empty());
    CHECK(d.gain.value == 0);
    CHECK(d.heard.vowel == d.heard_kept.vowel);
    CHECK(d.why == "2fo at 524 Hz is below fR1 at 940 Hz: it is heard as meant");
}

TEST_CASE("a high note on a close vowel asks for a higher fR1, by a gesture that can be felt") {
    // Sopranos' fR1 follows fo once fo passes it (Joliveau, Smith & Wolfe 2004).
    auto const d = read(soprano(), sung(0, 784)); // G5 on /i/
    CHECK(d.advice == Advice::modify);
    CHECK(d.zone.zone == Zone::above);
    CHECK(d.target.r1.centre > hertz(600));
    CHECK(d.target.r1.sd / d.target.r1.centre == doctest::Approx(25.0 / 437)); // goes along
    CHECK(d.gain.value > 3);
    REQUIRE_FALSE(d.gestures.empty());
    CHECK(d.gestures.size() <= 3);
    CHECK(std::is_sorted(d.gestures.begin(), d.gestures.end(), [](auto const& a, auto const& b) {
        return std::abs(a.amount) > std::abs(b.amount);
    }));
    CHECK(d.brief == in_short({d.gestures.front()})); // in the words of the pencil
    CHECK(d.why.find("fo is 784 Hz, above fR1 at 440 Hz: raising fR1 to ") == 0);
    CHECK(d.text_cost.value == d.heard.distance.value);
}

TEST_CASE("a decision can be read by a technique's own wish") {
    Singer singer;
    singer.vowels = {known_vowel("ɛ", 731, 2058)};
    Technique wish;
    wish.name = "studio";
    wish.relations.push_back({{2}, WantedRelation::Side::below, {1}, false, 2, std::nullopt, std::nullopt});
    Strategy const strategy(singer, wish, singer.vowels, parse_pitch_range("C4..C6"));
    auto const d = read(strategy, sung(0, 415)); // 2fo = 830 Hz
    CHECK(d.advice == Advice::modify);
    CHECK(d.why.find("studio wants 2fo below fR1: 2fo is 830 Hz, fR1 goes from 730 Hz to ") == 0);
}

TEST_CASE("a decision is the same whoever else uses the cache, and the second reading finds all in it") {
    PlanCache cache;
    auto const lent = soprano({.executor = nullptr, .cache = &cache}), again = soprano({nullptr, &cache}),
               alone = soprano();
    auto const sets = cache.reachable_sets();
    CHECK(sets == 4);
    for (double fo : {262.0, 440.0, 784.0}) {
        auto const a = read(lent, sung(0, fo));
        auto const lands = cache.landscapes();
        auto const b = read(again, sung(0, fo)), c = read(alone, sung(0, fo));
        CHECK(cache.landscapes() == lands);
        for (auto const* other : {&b, &c}) {
            CHECK(a.why == other->why);
            CHECK(a.certainty == other->certainty);
            CHECK(a.target.r1.centre == other->target.r1.centre);
            CHECK(a.gain.value == other->gain.value);
        }
    }
    CHECK(cache.reachable_sets() == sets);
    CHECK(&lent.landscape(Pitch(hertz(440)), {}) == &again.landscape(Pitch(hertz(440)), {}));
    CHECK(&lent.landscape(Pitch(hertz(440)), {}) != &alone.landscape(Pitch(hertz(440)), {}));
}

TEST_CASE("importance: nothing to watch is 0, and more of what matters is more") {
    auto const of = [](Decision const& d, double length, Decision const* before = nullptr) {
        return importance_of(d, seconds(length), before);
    };
    Decision hold;
    hold.zone.zone = Zone::close;
    CHECK(of(hold, 8) == 0);
    auto turning = hold;
    turning.zone.zone = Zone::turning; // held, but the sound turns here
    auto migrate = hold;
    migrate.advice = Advice::migrate;
    auto modify = hold;
    modify.advice = Advice::modify;
    modify.target.shade = parse_ipa("ɛ");
    CHECK(of(turning, 1) > 0);
    CHECK(of(migrate, 1) > of(turning, 1));
    CHECK(of(modify, 1) > of(migrate, 1));
    CHECK(of(modify, 1) > of(modify, 0.25)); // a long note more than a short one
    CHECK(of(modify, 1, &hold) == of(modify, 1));
    CHECK(of(modify, 1, &modify) < of(modify, 1)); // said once
    auto shaded = modify;
    shaded.target.shade = parse_ipa("a");
    CHECK(of(modify, 1, &shaded) == of(modify, 1)); // another shade is said anew
    auto far = migrate;
    far.heard_kept.distance = Bark{2};
    CHECK(of(far, 1) > of(migrate, 1));
    auto unsure = migrate;
    unsure.certainty = 0.6;
    CHECK(of(unsure, 1) > of(migrate, 1));
    auto all = modify;
    all.heard_kept.distance = Bark{9};
    all.certainty = 0.5;
    CHECK(of(all, 60) == doctest::Approx(1));
}
