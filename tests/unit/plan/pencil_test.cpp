// SPDX-License-Identifier: MIT
// What is pencilled and watched, of plans made by hand. How a teacher marks a copy is common practice, no
// source: few signs, where a singer has time to do something, the same place once.
#include "vowelway/plan/pencil.hpp"

#include "support/sample_plan.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace vowelway;
using plan::Advice;

namespace {

using Part = acoustics::GesturePart;

/// A tenor's plan in which nothing is to be done, whatever the rule of thumb says.
plan::Plan left_alone(Passage const& passage) {
    auto out = sample::plan_of(passage, sample::singer(), parse_pitch_range("C3..A4"));
    for (auto& n : out.notes) {
        if (!n.decision) continue;
        n.decision->advice = Advice::hold;
        n.decision->gestures.clear();
        n.decision->target.shade = passage.notes[n.note].vowel->held;
        n.decision->certainty = 0.9;
    }
    return out;
}

void ask(plan::Plan& plan, std::size_t note, char const* shade, double jaw, double certainty = 0.9) {
    auto& d = *plan.notes[note].decision;
    d.advice = Advice::modify;
    d.gestures = {{Part::jaw, jaw, "open the jaw"}};
    d.target.shade = parse_ipa(shade);
    d.certainty = certainty;
}

/// Two verses of a bar: C4, A4 held, and back; a rest between. A quarter is 0.8 s.
Passage two_verses() {
    Passage p;
    for (int verse = 0; verse < 2; ++verse)
        sample::add_bar(p,
                        {{"C4", 0.5, "la", "a"}, {"A4", 2, "mi", "i"}, {"C4", 0.5, "la", "a"}, {nullptr, 1}});
    return p;
}

} // namespace

TEST_CASE("where nothing is to be done nothing is watched, and the page says so") {
    auto const plan = left_alone(two_verses());
    auto const pencil = pencil_of(plan);
    CHECK(pencil.watch.empty());
    CHECK(std::ranges::none_of(pencil.marks, [](auto const& m) { return !m.turns; }));
    CHECK(summary_of(plan, pencil).starts_with("Nothing to change"));
}

TEST_CASE("the same place in two verses is watched once, with both bars, and pencilled twice") {
    auto plan = left_alone(two_verses());
    ask(plan, 1, "ɪ", 0.3);
    ask(plan, 4, "ɪ", 0.3);
    auto const pencil = pencil_of(plan);
    REQUIRE(pencil.watch.size() == 1);
    CHECK(pencil.watch[0].note == 1);
    CHECK(pencil.watch[0].also == std::vector<std::size_t>{4});
    CHECK(pencil.watch[0].words == "jaw a little open");
    CHECK(plan::bars_of(plan.passage, {1, 4}) == "bars 1 and 2");
    auto changes = pencil.marks;
    std::erase_if(changes, [](auto const& m) { return m.turns; });
    REQUIRE(changes.size() == 2);
    CHECK(changes[1].vowel == parse_ipa("ɪ"));
    CHECK(changes[1].words == "jaw a little open"); // another phrase: said again
    ask(plan, 4, "ɪ", 0.6);                         // no longer the same to do
    CHECK(pencil_of(plan).watch.size() == 2);
}

TEST_CASE("long and exposed notes come first, short and hardly felt ones not at all") {
    Passage p;
    sample::add_bar(
        p, {{"E4", 1.5, "la", "a"}, {"A4", 0.5, "mi", "i"}, {"C4", 0.25, "la", "a"}, {nullptr, 1.75}});
    sample::add_bar(p, {{"G4", 3, "mi", "i"}, {nullptr, 1}});
    sample::add_bar(p, {{"F4", 2, "mi", "i"}, {"E4", 0.25, "mi", "i"}, {nullptr, 1.75}});
    auto plan = left_alone(p);
    ask(plan, 0, "ɑ", 0.3);
    ask(plan, 1, "ɪ", 0.3);
    ask(plan, 2, "ɑ", 0.9); // 0.2 s and not the highest
    ask(plan, 3, "ɪ", 0.3);
    ask(plan, 4, "ɪ", 0.14); // 1.6 s, hardly a movement
    auto const pencil = pencil_of(plan);
    std::vector<std::size_t> notes;
    for (auto const& w : pencil.watch) notes.push_back(w.note);
    CHECK(notes == std::vector<std::size_t>{3, 0, 1}); // 2.4 s and highest; 1.2 s; 0.4 s but highest
    for (auto const& m : pencil.marks) {
        if (m.turns) continue;
        CHECK(m.note != 2);
        CHECK(m.note != 4);
    }
}

TEST_CASE("one mark holds for the notes that ask for the same, what was said in a phrase is not said again") {
    Passage p;
    sample::add_bar(p,
                    {{"E4", 1, "la", "a"}, {"F4", 1, "la", "a"}, {"G4", 1, "le", "e"}, {"F4", 1, "la", "a"}});
    auto plan = left_alone(p);
    for (std::size_t i = 0; i < 4; ++i) ask(plan, i, i == 2 ? "ɛ" : "a", 0.3);
    auto marks = pencil_of(plan).marks;
    std::erase_if(marks, [](auto const& m) { return m.turns; });
    REQUIRE(marks.size() == 2);
    CHECK(marks[0].note == 0);
    CHECK(marks[0].last == 1);
    CHECK_FALSE(marks[0].vowel.has_value()); // the text's own
    CHECK(marks[0].words == "jaw a little open");
    CHECK(marks[1].vowel == parse_ipa("ɛ"));
    CHECK(marks[1].words.empty());
    CHECK(marks[1].last == 2); // what follows is sung as the text says, the jaw as before
}

TEST_CASE("what the measurement leaves open is pencilled with a doubt, and only where there is time") {
    auto plan = left_alone(two_verses());
    ask(plan, 1, "ɪ", 0.3, 0.5); // 1.6 s
    ask(plan, 3, "ɑ", 0.3, 0.5); // 0.4 s
    auto marks = pencil_of(plan).marks;
    std::erase_if(marks, [](auto const& m) { return m.turns; });
    REQUIRE(marks.size() == 1);
    CHECK(marks[0].note == 1);
    CHECK_FALSE(marks[0].sure);
}

TEST_CASE("where the plan turns a vowel over a sign stands, once in a phrase, and not where it is changed") {
    Passage p;
    sample::add_bar(
        p, {{"E4", 1, "la", "a"}, {"F#4", 1, "la", "a"}, {"E4", 1, "la", "a"}, {"F#4", 1, "la", "a"}});
    sample::add_bar(p, {{nullptr, 1}, {"C3", 1, "mi", "i"}, {"D3", 2, "mi", "i"}});
    auto plan = left_alone(p);
    for (auto& n : plan.notes) n.decision->turns_here = n.note == 1 || n.note == 3 || n.note == 5;
    CHECK(pencil_of(plan).turns == std::vector<std::size_t>{1}); // D3 is too low to speak of
    CHECK(summary_of(plan, pencil_of(plan)) == "Nothing to change; the vowel turns over in bar 1.");
    ask(plan, 1, "ɑ", 0.3);
    CHECK_FALSE(turns_here(plan, 1));
    CHECK(pencil_of(plan).turns == std::vector<std::size_t>{3});
}

// The sample tenor: /i/ turns at E3, far under a tenor's passaggio (D4 in the handbooks), /a/ at F4.
TEST_CASE(
    "where a vowel turns far under the passaggio, or the line leaps far over the turn, no sign stands") {
    Passage p;
    sample::add_bar(p, {{"D3", 1, "mi", "i"}, {"E4", 3, "mi", "i"}});
    sample::add_bar(p, {{nullptr, 1}, {"D4", 1, "la", "a"}, {"G4", 2, "la", "a"}});
    auto plan = left_alone(p);
    for (auto& n : plan.notes) n.decision->turns_here = n.note == 1 || n.note == 3;
    CHECK(pencil_of(plan).turns == std::vector<std::size_t>{3});
    plan.vowels[*plan.notes[3].vowel].turning.pitch = Tuning{}.pitch(parse_spelled_pitch("C4"));
    CHECK(pencil_of(plan).turns.empty());
}

// Common practice, no source: no teacher of singing asks for spread lips; round ones are rounded less.
TEST_CASE("lips are rounded less on a round vowel and widen on another") {
    CHECK(plan::in_short({{Part::lip_protrusion, -0.3, "", true}}) == "lips a little less round");
    CHECK(plan::in_short({{Part::lip_protrusion, -0.3, "", false}}) == "lips a little wider");
}

TEST_CASE("a gesture in short says how much, and a second one only where it is felt") {
    CHECK(plan::in_short({}).empty());
    CHECK(plan::in_short({{Part::jaw, 0.2, ""}}) == "jaw a little open");
    CHECK(plan::in_short({{Part::jaw, 0.5, ""}, {Part::lip_protrusion, -0.45, ""}}) ==
          "jaw open, lips less round");
    CHECK(plan::in_short({{Part::jaw, 0.8, ""}, {Part::tongue_height, 0.2, ""}}) == "jaw wide");
    CHECK(plan::in_short({{Part::lip_opening, 0.6, ""}, {Part::lip_protrusion, 0.5, ""}}) == "lips open");
    CHECK(plan::in_short({{Part::larynx, -0.5, ""}}) == "larynx lower");
}
