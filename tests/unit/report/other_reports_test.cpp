// SPDX-License-Identifier: MIT
// Measurements, checks, histories, tracts and words, from values fixed by hand.
#include "vowelway/report/check_report.hpp"
#include "vowelway/report/history_report.hpp"
#include "vowelway/report/measurement_report.hpp"
#include "vowelway/report/recording_card.hpp"
#include "vowelway/report/tract_report.hpp"
#include "vowelway/report/words_report.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <string>

using namespace vowelway;
using namespace vowelway::report;
using Json = nlohmann::json;

namespace {

Resonance resonance(double hz, double sd) { return {hertz(hz), hertz(sd), false, {}}; }

analysis::Measurements measured() {
    analysis::Measurements m;
    analysis::Take good;
    good.vowel = parse_ipa("e");
    good.span = {seconds(0.5), seconds(1.25)};
    good.excitation.kind = analysis::ProbeKind::creak;
    good.excitation.rate = hertz(31.26);
    auto bad = good;
    bad.refused = "too soft";
    m.takes = {good, bad};
    analysis::MeasuredVowel v;
    v.vowel = parse_ipa("e");
    v.kind = analysis::ProbeKind::creak;
    v.takes = 1;
    v.tract.resonances[0] = resonance(404, 33);
    v.tract.resonances[1] = resonance(2006, 80);
    m.vowels = {v};
    m.remarks = {{Remark::Kind::assumed, "as a tenor"}};
    return m;
}

std::vector<std::string> const files{"take \xff.wav"};

Measurement on(char const* day, double r1) {
    Measurement m;
    m.date = day;
    m.vowel = parse_ipa("a");
    m.r1 = resonance(r1, 7);
    m.r2 = resonance(1200, 20);
    return m;
}

} // namespace

TEST_CASE("a measurement as JSON, its file name not UTF-8") {
    auto const json = Json::parse(measurement_json(measured(), files));
    CHECK(json["vowelway"] == 1);
    CHECK(json["takes"][0]["file"] == "take \uFFFD.wav");
    CHECK(json["takes"][0]["end_s"] == 1.25);
    CHECK(json["takes"][0]["rate_hz"] == 31.3);
    CHECK(json["takes"][0]["refused"].is_null());
    CHECK(json["takes"][1]["refused"] == "too soft");
    CHECK(json["vowels"][0]["tract"]["fR1_hz"] == 404.0);
    CHECK_FALSE(json["vowels"][0]["tract"].contains("fR3_hz"));
    CHECK(json["shift"].size() == 4); // whisper, creak, sung, spoken
    CHECK(json["remarks"][0]["text"] == "as a tenor");
}

TEST_CASE("a measurement as text: no finer than 10 Hz, and why a take gave no number") {
    auto const text = measurement_text(measured(), {"take.wav"}, Tuning{});
    CHECK(text.find("400 ± 30") != std::string::npos);
    CHECK(text.find("2010 ± 80") != std::string::npos);
    CHECK(text.find("404") == std::string::npos);
    CHECK(text.find("take.wav 0.50-1.25 s /e/: no result: too soft\n") != std::string::npos);
}

// Interval by hand: 1200 log2(449/400) is 200.07 cents, two semitones.
TEST_CASE("a check as JSON and as text") {
    analysis::Checked one;
    one.comparison.vowel = parse_ipa("e");
    one.comparison.kind = analysis::ProbeKind::creak;
    one.comparison.resonances[0] =
        analysis::Distance{hertz(449), hertz(20), hertz(400), hertz(12), Cents{200.07}, 2.1, false};
    one.comparison.verdict = analysis::Verdict::moved;
    one.comparison.says = "fR1 high";
    one.against = analysis::Checked::Against::plan;
    one.shade = "e̞";
    one.bars = {"4", "5"};
    auto const json = Json::parse(check_json(measured(), {one}, files, "Ada"));
    CHECK(json["singer"] == "Ada");
    CHECK(json["takes"].size() == 2);
    auto const& check = json["checks"][0];
    CHECK(check["against"] == "plan");
    CHECK(check["target_ipa"] == "e̞");
    CHECK(check["measures"] == Json{"4", "5"});
    CHECK(check["resonances"][0]["resonance"] == "fR1");
    CHECK(check["resonances"][0]["semitones"] == 2.0);
    CHECK(check["trend"] == Json{nullptr, nullptr});
    auto const text = check_text(measured(), {one}, {"take.wav"});
    CHECK(text.find("plan e̞ bar 4, 5") != std::string::npos);
    CHECK(text.find("+2.0  +2.1") != std::string::npos);
    CHECK(text.find("/e/ against the plan: fR1 high\n") != std::string::npos);
    CHECK(text.find("no result: too soft") != std::string::npos);
}

// By hand: 700 to 742 Hz is 1200 log2(1.06) = 100.9 cents; each deviation 1 % is 17.2 cents, of both 23.8:
// clear.
TEST_CASE("a history says what changed from one measurement of a vowel to the next") {
    Profile p;
    p.singer.name = "Ada";
    p.history = {on("2026-10-01", 700), on("2026-11-01", 742)};
    auto const history = analysis::history_of(p, {});
    auto const json = Json::parse(history_json(p, history));
    CHECK(json["history"][0]["change"].is_null());
    CHECK(json["history"][1]["change"]["fR1_cents"] == 100.9);
    CHECK(json["history"][1]["change"]["fR1_clear"] == true);
    CHECK(json["history"][1]["change"]["fR2_clear"] == false);
    CHECK(history_text(p, history).find("+1.0 !") != std::string::npos);
    CHECK(analysis::history_of(p, {parse_ipa("i")}).empty());
    CHECK(history_text(p, {}) == "no measurements in this profile\n");
}

TEST_CASE("a solved tract as JSON and text") {
    acoustics::SolvedTract const tract{
        "i", centimetres(14.5), {{hertz(265.55), hertz(12.34)}}, {{hertz(266), hertz(1047)}}};
    auto const json = Json::parse(tracts_json({tract}, "none"));
    CHECK(json["loss"] == "none");
    CHECK(json["tracts"][0]["length_cm"] == 14.5);
    CHECK(json["tracts"][0]["resonances"][0]["bandwidth_hz"] == 12.3);
    CHECK(json["tracts"][0]["compliant_bands_hz"][0] == Json{266.0, 1047.0});
    CHECK(tracts_text({tract, tract}).find("compliant load, Hz: 266..1047\n\ni, 14.5 cm\n") !=
          std::string::npos);
}

TEST_CASE("words as JSON and text: an optional syllable is no nucleus, a guess has its doubt") {
    SungWord word;
    word.word = "belle";
    auto const syllable = [](char const* text, char const* ipa, bool optional) {
        SungSyllable s;
        s.text = text;
        s.ipa = ipa;
        s.vowel.held = parse_ipa(ipa);
        s.optional = optional;
        return s;
    };
    word.syllables = {syllable("bel", "ɛ", false), syllable("le", "œ", true)};
    word.guessed = true;
    word.doubt = "unknown";
    auto const json = Json::parse(words_json({word}, "fr"));
    CHECK(json["language"] == "fr");
    CHECK(json["words"][0]["nuclei"] == Json::array({"ɛ"}));
    CHECK(json["words"][0]["syllables"] == Json::array({"belle"}));
    CHECK(json["words"][0]["optional"] == "œ");
    CHECK(json["words"][0]["doubt"] == "unknown");
    CHECK(words_text({word}).find("bel-le     ɛ (œ)  guessed: unknown\n") != std::string::npos);
}

TEST_CASE("kind of each recording, the order and the lesson: JSON and text say the same, the lesson first") {
    auto m = measured();
    m.kinds = {{analysis::ProbeKind::creak, {0.02, 0.97, 0.006, 0.004}, {}}};
    m.lesson = {{analysis::LessonPoint::Kind::tongue_back, -4.2, 1.1, "the tongue is drawn back",
                 "let it lie forward"}};
    m.order = analysis::OrderFound{
        {parse_ipa("e"), parse_ipa("a")}, {parse_ipa("a"), parse_ipa("e")}, 0.9987, true};
    auto const json = Json::parse(measurement_json(m, files));
    CHECK(json["recordings"][0]["probe"] == "creak");
    CHECK(json["recordings"][0]["probability"]["whisper"] == 0.02);
    CHECK(json["order"]["better"] == Json{"a", "e"});
    CHECK(json["order"]["refused"] == true);
    CHECK(json["lesson"][0]["kind"] == "tongue back");
    CHECK(json["lesson"][0]["size"] == -4.2);
    CHECK(json["lesson"][0]["try"] == "let it lie forward");
    auto const text = measurement_text(m, files, Tuning{});
    CHECK(text.rfind("the tongue is drawn back; try: let it lie forward\n", 0) == 0);
    CHECK(text.find("creak (97 %)") != std::string::npos);
    CHECK(refusals_text(m, files).find("no result: too soft") != std::string::npos);
}

TEST_CASE("the card of instructions names the vowels in order and no line is wider than 80 letters") {
    auto const card =
        recording_card_text(analysis::recording_card({parse_ipa("i"), parse_ipa("a"), parse_ipa("u")}, 3));
    CHECK(card.find("3 times:   i  a  u\n") != std::string::npos);
    CHECK(card.find("not medical advice") != std::string::npos);
    std::size_t start = 0;
    for (auto end = card.find('\n'); end != std::string::npos; start = end + 1, end = card.find('\n', start))
        CHECK(end - start <= 80);
}
