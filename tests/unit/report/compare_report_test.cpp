// SPDX-License-Identifier: MIT
#include "vowelway/report/compare_report.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <sstream>
#include <string>

using namespace vowelway;
using namespace vowelway::report;

namespace {

Singer singer(char const* name, VoiceType voice, double r1, double r2, bool average = false) {
    Singer out;
    out.name = name;
    out.voice = voice;
    out.average = average;
    VowelResonances v;
    v.vowel = parse_vowel("a");
    v.r1 = {hertz(r1), hertz(20), false, {}};
    v.r2 = {hertz(r2), hertz(50), true, {}};
    out.vowels.push_back(v);
    return out;
}

plan::Comparison two() {
    return plan::compare_singers({{singer("One, \"the first\"", VoiceType::tenor, 700, 1250), {}},
                                  {singer("Two", VoiceType::treble, 900, 1500, true), {}}});
}

} // namespace

// Hand-computed: 700/2 = 350 Hz is F4 +3.8 cents (349.228 Hz, ISO 16); 900/700 is 435.1 cents.
TEST_CASE("a comparison as JSON") {
    auto const json = nlohmann::json::parse(comparison_json(two()));
    CHECK(json["vowelway"] == 1);
    CHECK(json["singers"][0]["singer"] == "One, \"the first\"");
    CHECK(json["singers"][0]["generic_passaggio"]["first"] == "D4");
    CHECK(json["singers"][1]["generic_passaggio"].is_null());
    auto const& vowel = json["vowels"][0];
    CHECK(vowel["ipa"] == "a");
    CHECK(vowel["singers"][0]["turning"]["hz"] == 350.0);
    CHECK(vowel["singers"][0]["turning"]["pitch"] == "F4");
    CHECK(vowel["singers"][0]["turning"]["cents"] == 3.8);
    CHECK(vowel["differences"][0]["fR1_cents"] == 435.1);
    CHECK(vowel["differences"][0]["fR1_clear"] == true);
    CHECK(json["warnings"][0]["text"] == "Two: average voice: measure your own");
}

TEST_CASE("a comparison as CSV has as many cells in each row as in the first") {
    std::istringstream in(comparison_csv(two()));
    std::string line;
    int rows = 0;
    auto const cells = [](std::string const& text) { // commas outside quotes
        bool quoted = false;
        int count = 1;
        for (char const c : text) {
            if (c == '"')
                quoted = !quoted;
            else if (c == ',' && !quoted)
                ++count;
        }
        return count;
    };
    int width = 0;
    while (std::getline(in, line)) {
        CHECK(line.back() == '\r');
        if (rows++ == 0) width = cells(line);
        CHECK(cells(line) == width);
    }
    CHECK(rows == 3);
    CHECK(comparison_csv(two()).find("a,\"One, \"\"the first\"\"\",tenor,false,false,700,20,") !=
          std::string::npos);
}

TEST_CASE("a comparison as text says what is average, what is clear and what is generic") {
    auto const text = comparison_text(two());
    CHECK(text.find("+4.4 *") != std::string::npos);
    CHECK(text.find("Two: average voice: measure your own") != std::string::npos);
    CHECK(text.find("generic, from memory") != std::string::npos);
}

TEST_CASE("a singer's picture as JSON and text") {
    SingerPicture picture;
    picture.singer = singer("One", VoiceType::tenor, 700, 1250);
    auto json = nlohmann::json::parse(singer_json(picture));
    CHECK(json["tract"].is_null());
    CHECK(json["range"].is_null());
    CHECK(json["vowels"][0]["resonances"][0]["pitch"] == "F5"); // 698.456 Hz, 3.8 cents below 700
    CHECK(json["vowels"][0]["resonances"][0]["cents"] == 3.8);
    CHECK(json["vowels"][0]["resonances"][1]["sd_assumed"] == true);
    picture.tract = plan::TractLength{17_cm, 0.8_cm, plan::TractLength::From::upper_resonances, 4};
    picture.among = {{VoiceType::tenor, 1, {Cents{50}, Cents{-100}, std::nullopt}, 0.3}};
    json = nlohmann::json::parse(singer_json(picture));
    CHECK(json["tract"]["length_cm"] == 17.0);
    CHECK(json["tract"]["from"] == "upper_resonances");
    CHECK(json["voices"][0]["fR1_cents"] == 50.0);
    CHECK(json["voices"][0]["fR3_cents"].is_null());
    auto const text = singer_text(picture);
    CHECK(text.find("vocal tract: 17.0 cm ±0.8, estimated from the upper resonances of 4 vowels") !=
          std::string::npos);
    CHECK(text.find("1250 ±50*") != std::string::npos);
    CHECK(text.find("* deviation assumed") != std::string::npos);
}
