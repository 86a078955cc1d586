// SPDX-License-Identifier: MIT
// The reports of a plan whose values are fixed by hand: nothing here asks the planner.
#include "vowelway/report/plan_report.hpp"
#include "vowelway/report/score_marks.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <string>

using namespace vowelway;
using namespace vowelway::report;

namespace {

SungNote note(char const* pitch, double beat, char const* syllable, char const* vowel) {
    SungNote n{.pitch = Tuning{}.pitch(parse_spelled_pitch(pitch)),
               .spelled = parse_spelled_pitch(pitch),
               .measure = "7",
               .beat = beat,
               .start = seconds(beat - 1),
               .length = seconds(0.5),
               .syllables = {{syllable, Syllable::Part::single}},
               .typed_ipa = {},
               .dynamic = {},
               .vowel = {}};
    if (*vowel) n.vowel = SungVowel{.held = parse_ipa(vowel), .before = {}, .after = {}};
    return n;
}

plan::Decision held(VowelResonances const& v) {
    plan::Decision d;
    d.zone = {plan::Zone::open, 0.02, 0};
    d.heard = d.heard_kept = {v.vowel, Bark{0.1}};
    d.target = {v.r1, v.r2, v.vowel};
    d.certainty = 0.95;
    d.brief = "hold";
    d.why = "2fo, 523 Hz, is below fR1.";
    return d;
}

plan::Decision changed(VowelResonances const& v) {
    auto d = held(v);
    d.zone = {plan::Zone::meeting, 1, 0.5};
    d.advice = plan::Advice::modify;
    d.certainty = 0.6;
    d.target.r1.centre = hertz(784);
    d.target.shade = parse_ipa("ɑ");
    d.gestures = {{acoustics::Gesture::Part::jaw, 0.3, "open the jaw a little open"}};
    d.gain = Decibels{3.24};
    d.brief = "open, \"round\"";
    d.why = "fo, 784 Hz, has come to fR1.";
    return d;
}

/// C4 held, G5 changed, D4 without a vowel; fR1 700, fR2 1240.
plan::Plan fixed() {
    VowelResonances a;
    a.vowel = parse_ipa("a");
    a.r1 = {hertz(700), hertz(30), false, {}};
    a.r2 = {hertz(1240), hertz(60), true, {}};
    plan::Plan p{.singer = {},
                 .technique = "classical",
                 .range = parse_pitch_range("C4..G5"),
                 .passage = {},
                 .vowels = {},
                 .notes = {},
                 .remarks = {}};
    p.singer.name = "Ada, =1+1";
    p.singer.voice = VoiceType::soprano;
    p.passage.title = "A tune";
    p.passage.notes = {note("C4", 1, "la", "a"), note("G5", 2, "la", "a"), note("D4", 3, "m", "")};
    auto const crossing = [&](int n) {
        return plan::Crossing{Harmonic{n}, ResonanceNumber{1}, Pitch(hertz(700.0 / n)), a.r1.sd_cents()};
    };
    p.vowels.push_back({.resonances = a,
                        .turning = crossing(2),
                        .fo_leads = crossing(2).pitch,
                        .meeting = crossing(1),
                        .crossings = {crossing(2), crossing(1)},
                        .strip = {},
                        .passive_range = {},
                        .sung = seconds(1)});
    p.notes = {{0, 0, held(a), 0}, {1, 0, changed(a), 0.8}, {2, {}, {}, 0}};
    p.remarks = {{Remark::Kind::caution, "sing softly"}};
    return p;
}

} // namespace

// 350 Hz is F4 +3.8 cents: 1200 log2(350/349.228), with A4 = 440 Hz (ISO 16).
TEST_CASE("a plan as JSON gives the values it was given, by the names of docs/formats.md") {
    auto const json = nlohmann::json::parse(plan_json(fixed()));
    CHECK(json["vowelway"] == 1);
    CHECK(json["singer"] == "Ada, =1+1");
    auto const& vowel = json["vowels"][0];
    CHECK(vowel["fR1_hz"] == 700.0);
    CHECK(vowel["fR2_sd_assumed"] == true);
    CHECK_FALSE(vowel.contains("fR1_sd_assumed"));
    CHECK(vowel["turning"]["pitch"] == "F4");
    CHECK(vowel["turning"]["cents"] == 3.8);
    CHECK(vowel["passive_range"].is_null());
    auto const& notes = json["notes"];
    REQUIRE(notes.size() == 3);
    CHECK(notes[0]["advice"] == "hold");
    CHECK(notes[0]["fo_hz"] == 261.63);
    CHECK(notes[1]["advice"] == "modify");
    CHECK(notes[1]["zone"] == "meeting");
    CHECK(notes[1]["target"]["fR1_hz"] == 784.0);
    CHECK(notes[1]["target"]["ipa"] == "ɑ");
    CHECK(notes[1]["gesture"][0]["words"] == "open the jaw a little open");
    CHECK(notes[1]["gain_db"] == 3.2);
    CHECK(notes[1]["certainty"] == 0.6);
    CHECK(notes[2]["ipa"].is_null());
    CHECK_FALSE(notes[2].contains("target"));
    CHECK(json["warnings"][0]["text"] == "sing softly");
}

TEST_CASE("a plan as CSV: one row a note, cells with quotes doubled (RFC 4180)") {
    auto const csv = plan_csv(fixed());
    CHECK(std::ranges::count(csv, '\n') == 4);
    CHECK(csv.find("7,2,G5,783.99,1,0.5,la,a,") != std::string::npos);
    CHECK(csv.find("\"fo, 784 Hz, has come to fR1.\"") != std::string::npos);
    CHECK(csv.find("7,3,D4,293.66,2,0.5,m,,,,,,,,,,,,,\r\n") != std::string::npos);
}

/// The same, sung long enough to be worth a pencil.
plan::Plan slow() {
    auto plan = fixed();
    plan.passage.notes[1].length = seconds(2);
    return plan;
}

TEST_CASE("a plan as text says what to watch, marks what is unsure and carries the caution") {
    auto const text = plan_text(slow());
    CHECK(text.find("One place to change.\n") != std::string::npos);
    CHECK(text.find("  bar 7, beat 2, G5 \"la\": a → ɑ · jaw a little open ?\n") != std::string::npos);
    CHECK(text.find("bar 7, beat 1") == std::string::npos); // nothing to watch
    CHECK(text.find("modify?") != std::string::npos);
    CHECK(text.find("hold?") == std::string::npos);
    CHECK(text.find(voice_caution) != std::string::npos);
    for (char const* number : {"fR1", "Hz,", "700", "±"}) CHECK(text.find(number) == std::string::npos);
    // One pitch under one name: "turns over near" is the 2fo = fR1 of the JSON and of the singer's sheet.
    CHECK(text.find("\na      F4  ") != std::string::npos);
    auto const numbers = plan_text(slow(), Numbers::shown);
    CHECK(numbers.find("700 ±30") != std::string::npos);
    CHECK(numbers.find("jaw a little open ?; fo, 784 Hz, has come to fR1.\n") != std::string::npos);
}

TEST_CASE("a plan as JSON lists what to watch and what to pencil, either may be empty") {
    auto const quick = nlohmann::json::parse(plan_json(fixed())); // half a second, unsure: not worth a sign
    CHECK(quick["watch"].empty());
    CHECK(quick["pencil"].empty());
    CHECK(quick["summary"] == "Nothing to change.");
    auto const json = nlohmann::json::parse(plan_json(slow()));
    CHECK(json["watch"] == nlohmann::json{1});
    CHECK(json["watch_again"] == nlohmann::json{nlohmann::json::array()});
    REQUIRE(json["pencil"].size() == 1);
    CHECK(json["pencil"][0]["ipa"] == "ɑ");
    CHECK(json["pencil"][0]["words"] == "jaw a little open");
    CHECK(json["pencil"][0]["sure"] == false);
}

TEST_CASE("the marks of a plan: what is pencilled, or every note, no sign that music has a use for") {
    CHECK(marks_of(fixed(), MarkDetail::changes).notes.empty());
    auto const changes = marks_of(slow(), MarkDetail::changes);
    REQUIRE(changes.notes.size() == 1);
    CHECK(changes.notes[0].note == 1);
    CHECK(changes.notes[0].ipa == "ɑ");
    CHECK(changes.notes[0].words == "jaw a little open?");
    auto const all = marks_of(fixed(), MarkDetail::all);
    REQUIRE(all.notes.size() == 2);
    CHECK(all.notes[0].ipa == "a");
    CHECK(all.notes[0].words.empty());
    CHECK(all.notes[1].ipa == "ɑ");
    CHECK(all.notes[1].words == "jaw a little open");
    CHECK(all.heading.find("never push") != std::string::npos);
    auto const vowels = marks_of(fixed(), MarkDetail::vowels);
    REQUIRE(vowels.notes.size() == 2);
    CHECK(vowels.notes[1].words.empty());
    CHECK_FALSE(parse_mark_detail("some").has_value());
}

TEST_CASE("a choir's marks ask each part for the vowel that all can sing, in place of its own plan's") {
    plan::Choir choir;
    choir.parts = {{"Soprano", "", false, fixed()}, {"Alto", "", false, fixed()}};
    auto const asked = [](std::size_t part, char const* shade, char const* ask) {
        plan::SungTogether out;
        out.part = part;
        out.note = 1;
        out.shade = parse_ipa(shade);
        out.ask = ask;
        return out;
    };
    plan::SharedWord word;
    word.apart = Bark{2};
    word.has_common = true;
    word.sections = {asked(0, "ʌ", "lean to"), asked(1, "a", "")};
    choir.words = {word};
    auto const soprano = marks_of(choir, 0, MarkDetail::changes);
    REQUIRE(soprano.notes.size() == 1);
    CHECK(soprano.notes[0].note == 1);
    CHECK(soprano.notes[0].ipa == "ʌ");
    CHECK(soprano.notes[0].words.empty()); // the letter is enough
    CHECK(marks_of(choir, 0, MarkDetail::all).notes[1].words == "lean to /ʌ/");
    CHECK(soprano.heading.find("One vowel for all") != std::string::npos);
    // Who is asked for nothing keeps the marks of the own plan; so do all where no vowel is common.
    auto const letters = [](ScoreMarks const& marks) {
        std::string out = marks.heading;
        for (auto const& mark : marks.notes) out += " " + std::to_string(mark.note) + mark.ipa + mark.words;
        return out;
    };
    auto const own = letters(marks_of(choir.parts[1].plan, MarkDetail::all));
    CHECK(letters(marks_of(choir, 1, MarkDetail::all)) == own);
    CHECK(letters(marks_of(choir, 0, MarkDetail::all)) != own);
    choir.words[0].has_common = false;
    CHECK(letters(marks_of(choir, 0, MarkDetail::all)) == own);
}
