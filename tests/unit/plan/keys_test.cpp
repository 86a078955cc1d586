// SPDX-License-Identifier: MIT
// What a song asks for, and in which key. The figures are checked against the plan itself, which puts every
// note into words; the choice by what must hold for any voice.
#include "vowelway/plan/keys.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <doctest/doctest.h>

#include <array>

using namespace vowelway;
using namespace vowelway::plan;

namespace {

Singer singer(char const* range = "C4..A5") {
    Singer s;
    s.name = "Livia Tarn";
    s.voice = VoiceType::soprano;
    if (range) s.range = parse_pitch_range(range);
    struct Row {
        char const* vowel;
        double r1, r2;
    };
    for (auto const& row : {Row{"i", 340, 2600}, Row{"a", 850, 1400}, Row{"u", 370, 800}}) {
        VowelResonances v;
        v.vowel = parse_vowel(row.vowel);
        v.r1 = {hertz(row.r1), hertz(0.06 * row.r1), false, {}};
        v.r2 = {hertz(row.r2), hertz(0.04 * row.r2), false, {}};
        s.vowels.push_back(v);
    }
    return s;
}

/// Up and down over a tenth, with a breath after each five notes.
Passage tune(char const* low) {
    Passage p;
    double at = 0;
    std::array const steps{0, 4, 7, 12, 16, 12, 11, 7, 4, 0, 2, 5, 9, 14, 12};
    std::array const vowels{"a", "i", "u"};
    for (std::size_t i = 0; i < steps.size(); ++i) {
        auto const pitch = p.tuning.pitch(parse_spelled_pitch(low)) + semitones(steps[i]);
        SungNote n{pitch, p.tuning.name(pitch).pitch};
        n.measure = std::to_string(i / 5 + 1);
        n.start = seconds(at);
        n.length = seconds(i % 5 == 4 ? 1.5 : 0.5);
        n.vowel = SungVowel{.held = parse_vowel(vowels[i % 3]), .before = {}, .after = {}};
        at += in_seconds(n.length) + (i % 5 == 4 ? 0.5 : 0);
        p.notes.push_back(n);
    }
    return p;
}

PlanRequest request(char const* low, char const* range = "C4..A5") {
    PlanRequest r;
    r.singer = singer(range);
    r.passage = tune(low);
    r.draws = 20;
    return r;
}

} // namespace

TEST_CASE("the figures are those of the plan that is put into words") {
    auto const plan = make_plan(request("D4"));
    auto const demand = demand_of(request("D4"));
    for (auto const& term : cost_term_names)
        CHECK(demand.cost.*term.value == doctest::Approx(plan.cost.*term.value).epsilon(1e-9));
    double whole = 0, hold = 0, modify = 0;
    std::size_t at = 0;
    for (auto const& note : plan.notes) {
        if (!note.decision) continue;
        double const s = in_seconds(plan.passage.notes[note.note].length);
        whole += s;
        hold += s * note.decision->shares.hold;
        modify += s * note.decision->shares.modify;
        CHECK(demand.each[at].note == note.note);
        CHECK(demand.each[at].advice == note.decision->advice);
        CHECK(demand.each[at].zone == note.decision->zone.zone);
        ++at;
    }
    CHECK(at == demand.each.size());
    CHECK(demand.time.hold == doctest::Approx(hold / whole));
    CHECK(demand.time.modify == doctest::Approx(modify / whole));
    CHECK(demand.time.hold + demand.time.migrate + demand.time.modify == doctest::Approx(1));
}

TEST_CASE("the worst note costs most") {
    auto const demand = demand_of(request("D4"));
    auto const* worst = demand.worst();
    REQUIRE(worst);
    for (auto const& each : demand.each) CHECK(each.cost <= worst->cost);
}

TEST_CASE("the keys are those that keep the song in the range, with the one it stands in") {
    auto const keys = plan_keys(request("D4")); // D4..F#5, range C4..A5: two lower, three higher
    REQUIRE(keys.keys.size() == 6);
    CHECK(keys.keys.front().semitones == -2);
    CHECK(keys.keys.back().semitones == 3);
    CHECK(keys.keys.front().low.str() == "C4");
    CHECK(keys.keys.back().high.str() == "A5");
    for (auto const& key : keys.keys) CHECK(key.terms.beyond == doctest::Approx(0).epsilon(0.01));

    auto const narrow = plan_keys(request("D4", "E4..E5")); // wider than the range: the five nearest to it
    CHECK(narrow.keys.size() >= 5);
    CHECK(narrow.as_written() != nullptr);
    for (auto const& key : narrow.keys) CHECK(key.terms.beyond > 0);

    auto const asked = plan_keys(request("D4"), KeyRange{-1, 1});
    CHECK(asked.keys.size() == 3);
    CHECK_THROWS_AS(plan_keys(request("D4"), KeyRange{2, -2}), InputError);
    CHECK_THROWS_AS(plan_keys(request("D4"), KeyRange{-30, 0}), InputError);
}

TEST_CASE("the key proposed is the same note wherever the song stands") {
    auto const here = plan_keys(request("D4"), KeyRange{-4, 4});
    auto const higher = plan_keys(request("E4"), KeyRange{-6, 2});
    CHECK(here.recommended().low.key_number() == higher.recommended().low.key_number());
    CHECK(here.recommended().terms.total() == doctest::Approx(higher.recommended().terms.total()));
}

TEST_CASE("a song that lies too low is proposed higher, one that lies too high lower") {
    CHECK(plan_keys(request("F3", "C4..A5"), KeyRange{-6, 9}).recommended().semitones > 0);
    CHECK(plan_keys(request("B4", "C4..A5"), KeyRange{-12, 6}).recommended().semitones < 0);
}

TEST_CASE("what speaks against a key is said, the weightiest first") {
    auto const keys = plan_keys(request("B4"), KeyRange{-9, 0});
    auto const why = against(*keys.as_written(), keys.recommended());
    REQUIRE_FALSE(why.empty());
    double before = 1e9;
    for (auto const words : why)
        for (auto const& term : key_term_names)
            if (term.words == words) {
                double const more =
                    keys.as_written()->terms.*term.value - keys.recommended().terms.*term.value;
                CHECK(more <= before);
                CHECK(more > same_key);
                before = more;
            }
    CHECK(against(keys.recommended(), keys.recommended()).empty());
}

TEST_CASE("keys in words, and their signatures") {
    CHECK(words_of_key(0) == "as written");
    CHECK(words_of_key(-1) == "a semitone lower");
    CHECK(words_of_key(3) == "3 semitones higher");
    CHECK(words_of_key(12) == "an octave higher");
    CHECK(words_of_signature(0) == "no signs");
    CHECK(words_of_signature(1) == "1 sharp");
    CHECK(words_of_signature(-3) == "3 flats");
    // D major a minor third up is F major, a semitone down D flat major (theory of music: the circle of
    // fifths)
    auto r = request("D4");
    r.passage.staff.measures.resize(1);
    r.passage.staff.measures[0].key = KeySignature{2};
    auto const keys = plan_keys(std::move(r), KeyRange{-1, 3});
    CHECK(keys.keys.back().fifths == -1);
    CHECK(keys.keys.front().fifths == -5);
    CHECK(keys.keys.front().low.str() == "D♭4");
}

TEST_CASE("where a voice may dwell") {
    CHECK(dwelling_of(singer("C4..A5"))->str() == "E♭4..E5");
    CHECK(dwelling_of(singer("C4..G4"))->str() == "C4..G4"); // nothing to take off
    CHECK(dwelling_of(singer(nullptr))->str() == "D4..F♯5"); // of the type
    auto nobody = singer(nullptr);
    nobody.voice = VoiceType::other;
    CHECK_FALSE(dwelling_of(nobody));
}

TEST_CASE("one key for several singers leaves no one badly off") {
    std::vector<KeysPlan> both;
    both.push_back(plan_keys(request("D4"), KeyRange{-4, 4}));
    both.push_back(plan_keys(request("D4", "A3..E5"), KeyRange{-4, 4}));
    auto const key = common_key(both);
    REQUIRE(key);
    auto const regret = [&](int at) {
        double worst = 0;
        for (auto const& one : both)
            for (auto const& k : one.keys)
                if (k.semitones == at)
                    worst = std::max(worst, k.terms.total() - one.recommended().terms.total());
        return worst;
    };
    for (int at = -4; at <= 4; ++at) CHECK(regret(*key) <= regret(at) + 1e-12);
    both.push_back(plan_keys(request("D4"), KeyRange{8, 9}));
    CHECK_FALSE(common_key(both));
}

TEST_CASE("no note to move is bad input") {
    PlanRequest r;
    r.singer = singer();
    CHECK_THROWS_AS(plan_keys(r), InputError);
    CHECK_THROWS_AS(demand_of(r), InputError);
}
