// SPDX-License-Identifier: MIT
// A lesson from plans made by hand. Order and exercises are common practice, no source; the notes of a major
// scale are those of any primer (whole and half steps 2 2 1 2).
#include "vowelway/plan/lesson.hpp"

#include "plan/exercises.hpp"
#include "support/sample_plan.hpp"
#include "vowelway/plan/pencil.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace vowelway;

namespace {

plan::Plan three_phrases() {
    Passage p;
    sample::add_bar(p, {{"E4", 1, "Mi-", "i"}, {"F4", 2, "-o", "o"}, {nullptr, 1}});
    sample::add_bar(p, {{"C4", 1, "bel", "ɛ"}, {"D4", 2, "so-", "o"}, {nullptr, 1}});
    sample::add_bar(p, {{"E4", 1, "la", "a"}, {"G4", 2, "mi", "i"}, {nullptr, 1}});
    sample::add_bar(p, {{"E4", 1, "la", "a"}, {"G4", 2, "mi", "i"}, {nullptr, 1}});
    auto plan = sample::plan_of(p, sample::singer(), parse_pitch_range("C3..A4"));
    for (auto& n : plan.notes) {
        auto& d = *n.decision;
        d.advice = plan::Advice::hold;
        d.gestures.clear();
        d.target.shade = p.notes[n.note].vowel->held;
        d.certainty = 0.9;
    }
    auto const ask = [&](std::size_t note, char const* shade, double jaw) {
        auto& d = *plan.notes[note].decision;
        d.advice = plan::Advice::modify;
        d.gestures = {{acoustics::GesturePart::jaw, jaw, "open the jaw"}};
        d.target.shade = parse_ipa(shade);
    };
    ask(1, "ɔ", 0.2);
    ask(5, "ɪ", 0.5);
    ask(7, "ɪ", 0.5);
    return plan;
}

std::string names(std::vector<SpelledPitch> const& notes) {
    std::string out;
    for (auto const& n : notes) out += (out.empty() ? "" : " ") + n.str();
    return out;
}

} // namespace

TEST_CASE("phrases with something to do, the hardest first, one that comes back stands once") {
    auto const lesson = plan::lesson_of(three_phrases());
    REQUIRE(lesson.phrases.size() >= 2);
    CHECK(lesson.phrases[0].bars == "bar 3");
    CHECK(lesson.phrases[0].again == std::vector<std::string>{"bar 4"});
    CHECK(lesson.phrases[0].words == "la mi");
    CHECK(lesson.phrases[0].why.starts_with("up to G4; jaw open on G4"));
    CHECK(std::ranges::none_of(lesson.phrases, [](auto const& p) { return p.bars == "bar 4"; }));
    CHECK(std::ranges::is_sorted(lesson.phrases, std::greater{}, &plan::LessonPhrase::difficulty));
    REQUIRE(lesson.order.size() == lesson.phrases.size());
    CHECK(lesson.order.back() == 0); // the hardest last
    CHECK(lesson.in_brief[0].starts_with("C4 to G4; half of the time between"));
    CHECK(lesson.in_brief[2] == "Hardest: bar 3, G4 on /i/: jaw open.");
}

TEST_CASE("exercises go to the song's own notes, and stay within the singer's range") {
    auto const lesson = plan::lesson_of(three_phrases());
    REQUIRE(lesson.exercises.size() >= 2);
    auto const& first = lesson.exercises[0];
    CHECK(first.kind == plan::Exercise::Kind::scale);
    CHECK(names(first.notes) == "C4 D4 E4 F4 G4 F4 E4 D4 C4");
    CHECK(first.sung[0] == "i");
    CHECK(first.sung[3] == "ɪ");
    CHECK(first.how.find("jaw open") != std::string::npos);
    for (auto const& e : lesson.exercises)
        for (auto const& n : e.notes) {
            CHECK(n.key_number() >= parse_spelled_pitch("C3").key_number());
            CHECK(n.key_number() <= parse_spelled_pitch("A4").key_number());
        }
}

// A lesson that begins on a plain vowel where its own plan changes it contradicts itself.
TEST_CASE("a scale begins as the plan has its lowest note") {
    auto plan = three_phrases();
    auto const vowel = *plan.notes[plan::pencil_of(plan).watch.front().note].vowel;
    auto const low = Tuning{}.pitch(parse_spelled_pitch("C4"));
    for (auto& cell : plan.vowels[vowel].strip)
        if (std::abs(interval(low.frequency(), cell.pitch.frequency()).value) < 50) {
            cell.decision.advice = plan::Advice::modify;
            cell.decision.target.shade = parse_ipa("y");
        }
    auto const scale = plan::lesson_of(plan).exercises.at(0);
    CHECK(scale.sung[0] == "y");
    CHECK(scale.sung[3] == "ɪ");
    CHECK(scale.sung[6] == "y");
    CHECK(scale.how.starts_with("think /i/, begin toward /y/; on the upper notes toward /ɪ/, jaw open"));
}

// The sample tenor's /a/ turns at 350 Hz, F4.
TEST_CASE("a vowel that turns over in the song has a slide through its own turning point") {
    Passage p;
    sample::add_bar(p, {{"E4", 1, "la", "a"}, {"G4", 2, "la", "a"}, {nullptr, 1}});
    auto plan = sample::plan_of(p, sample::singer(), parse_pitch_range("C3..A4"));
    for (auto& n : plan.notes) n.decision->advice = plan::Advice::hold;
    plan.notes[1].decision->turns_here = true;
    auto const lesson = plan::lesson_of(std::move(plan));
    REQUIRE(lesson.exercises.size() == 1);
    CHECK(lesson.exercises[0].kind == plan::Exercise::Kind::slide);
    CHECK(lesson.exercises[0].notes.front().key_number() < parse_spelled_pitch("F4").key_number());
    CHECK(lesson.exercises[0].notes[1].key_number() > parse_spelled_pitch("F4").key_number());
    CHECK(lesson.exercises[0].listen.find("F4") != std::string::npos);
}

TEST_CASE("five notes are spelled as a scale is, with few signs") {
    CHECK(names(plan::five_notes_up(parse_spelled_pitch("D4"))) == "D4 E4 F♯4 G4 A4");
    CHECK(names(plan::five_notes_up(parse_spelled_pitch("F4"))) == "F4 G4 A4 B♭4 C5");
    CHECK(names(plan::five_notes_up(parse_spelled_pitch("D#4"))) == "E♭4 F4 G4 A♭4 B♭4");
    CHECK(names(plan::five_notes_up(parse_spelled_pitch("B3"))) == "B3 C♯4 D♯4 E4 F♯4");
}

TEST_CASE("a range gives no lesson") {
    CHECK_THROWS_AS(plan::lesson_of(sample::plan_of({}, sample::singer(), parse_pitch_range("C3..A4"))),
                    InputError);
}
