// SPDX-License-Identifier: MIT
#include "vowelway/io/profile/default_deviation.hpp"
#include "vowelway/io/profile/read_profile.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <string>

using namespace vowelway;
using namespace vowelway::io;

namespace {

std::string const head = "vowelway: 1\nsinger: Demo tenor\nvoice: tenor\n";

Singer read(std::string const& text) { return parse_profile(text, "demo.yaml").singer; }

/// The message of the error that the text gives.
std::string error(std::string const& text) {
    try {
        parse_profile(text, "demo.yaml");
    } catch (InputError const& e) {
        CHECK_FALSE(e.remedy().empty());
        CHECK(e.place().file == "demo.yaml");
        CHECK(e.place().line > 0);
        CHECK(e.place().column > 0);
        return e.what();
    }
    return "no error";
}

bool starts(std::string const& text, std::string const& with) { return text.rfind(with, 0) == 0; }
bool has(std::string const& text, std::string const& part) { return text.find(part) != std::string::npos; }

} // namespace

constexpr char const* with_everything =
    "# a comment\n"
    "vowelway: 1\n"
    "singer: Demo tenor\n"
    "voice: tenor\n"
    "range: B2..C5\n"
    "a4: 442 Hz\n"
    "tract_length: 17.0 cm\n"
    "source: {method: whisper, date: 2026-10-03, note: \"third lesson\"}\n"
    "vowels:\n"
    "  i: {fR1: 300 Hz ± 15, fR2: 2250 Hz ± 60}\n"
    "  ɛ: {fR1: 540 +- 25, fR2: 1780 ± 60 Hz, fR3: 2550, BR1: 60 Hz}\n"
    "  a: {fR1: F5 +20c ± 30c, fR2: D#6}\n"
    "  o~:\n"
    "    fR1: 450 Hz\n"
    "    fR2: 900 Hz\n"
    "    estimated: as /o/\n"
    "history:\n"
    "  - {date: 2026-09-01, method: creak, vowel: i, probes: 3, fR1: 310 Hz ± 20, fR2: "
    "2200 Hz ± 70, F1: 355 Hz, note: \"first\"}\n"
    "shift:\n"
    "  whisper: {fR1: 210 Hz ± 60, fR2: -20 Hz ± 80, pairs: 2, date: 2026-10-03}\n";

TEST_CASE("a profile with everything in it: the singer") {
    auto const singer = parse_profile(with_everything, "demo.yaml").singer;
    CHECK(singer.name == "Demo tenor");
    CHECK(singer.voice == VoiceType::tenor);
    CHECK(singer.range->str() == "B2..C5");
    CHECK(in_hertz(singer.tuning.a4) == 442);
    CHECK(in_centimetres(*singer.tract_length) == doctest::Approx(17));
    CHECK(singer.provenance.method == Method::whisper);
    CHECK(singer.provenance.date == "2026-10-03");
    CHECK(singer.provenance.note == "third lesson");
    CHECK_FALSE(singer.average);
    REQUIRE(singer.vowels.size() == 4);

    auto const remarks = profile_remarks(singer);
    REQUIRE(remarks.size() == 1);
    CHECK(has(remarks[0].text, "/ɛ/, /a/, /o\u0303/"));
    CHECK(has(remarks[0].text, "whisper"));
}

TEST_CASE("a profile with everything in it: the vowels") {
    auto const singer = parse_profile(with_everything, "demo.yaml").singer;
    REQUIRE(singer.vowels.size() == 4);

    auto const& i = singer.vowels[0];
    CHECK(i.vowel == parse_vowel("i"));
    CHECK(in_hertz(i.r1.centre) == 300);
    CHECK(in_hertz(i.r1.sd) == 15);
    CHECK_FALSE(i.r1.sd_assumed);
    CHECK_FALSE(i.r3);

    auto const& e = singer.vowels[1];
    CHECK(in_hertz(e.r1.sd) == 25);
    CHECK(in_hertz(e.r2.sd) == 60);
    REQUIRE(e.r3);
    CHECK(e.r3->sd_assumed);
    CHECK(in_hertz(e.r3->sd) == in_hertz(default_deviation(Method::whisper, {3}, e.r3->centre)));
    CHECK(in_hertz(*e.r1.bandwidth) == 60);

    // F5 over A4 = 442 Hz is 442 * 2^(8/12); 20 and 30 cents are 2^(20/1200) and 2^(30/1200).
    auto const& a = singer.vowels[2];
    CHECK(in_hertz(a.r1.centre) == doctest::Approx(442 * std::exp2(8.0 / 12 + 20.0 / 1200)));
    CHECK(a.r1.sd_cents().value == doctest::Approx(30));
    CHECK(in_hertz(a.r2.centre) == doctest::Approx(442 * std::exp2(18.0 / 12)));
    CHECK(a.r2.sd_assumed);

    CHECK(singer.vowels[3].vowel.nasal);
    CHECK(singer.vowels[3].estimated);
    CHECK(singer.vowels[3].origin == "as /o/");
}

TEST_CASE("a profile with everything in it: history and shifts") {
    auto const profile = parse_profile(with_everything, "demo.yaml");
    REQUIRE(profile.history.size() == 1);
    CHECK(profile.history[0].method == Method::creak);
    CHECK(profile.history[0].probes == 3);
    CHECK(in_hertz(*profile.history[0].heard[0]) == 355);
    CHECK(profile.history[0].note == "first");
    REQUIRE(profile.shifts.size() == 1);
    CHECK(in_hertz(profile.shifts[0].of[1]->mean) == -20);
    CHECK(in_hertz(profile.shifts[0].of[1]->sd) == 80);
    CHECK_FALSE(profile.shifts[0].of[2]);
}

TEST_CASE("Windows line ends and a byte order mark do not matter") {
    auto const singer = read("\xEF\xBB\xBF"
                             "vowelway: 1\r\nvowels:\r\n  a: {fR1: 700 Hz ± 50, fR2: 1200 Hz ± 80}\r\n");
    REQUIRE(singer.vowels.size() == 1);
    CHECK(starts(error("vowelway: 1\r\nvowels:\r\n  a: {fR1: 700 Hz ± 50, fR2: 12 Hz}\r\n"),
                 "demo.yaml:3:30: fR2 is 12 Hz"));
}

TEST_CASE("a slip is told with its place and how to mend it") {
    auto const vowels = [](std::string const& line) { return head + "vowels:\n  " + line + "\n"; };
    std::string const good = "fR1: 540 Hz, fR2: 1780 Hz";

    CHECK(error(vowels("i: {fR1: 2250 Hz, fR2: 300 Hz}")) ==
          "demo.yaml:5:12: fR1 is 2250 Hz, outside 150..1400 Hz\n  check the digits, and the octave if it is "
          "a pitch");
    CHECK(error(vowels("i: {fR1: 900 Hz, fR2: 450 Hz}")) ==
          "demo.yaml:5:12: fR1 of /i/ is 900 Hz, not below its fR2 (450 Hz)\n  are they swapped, or is there "
          "a digit too many?");
    // Columns count characters, not bytes: ɛ is two bytes and one column.
    CHECK(starts(error(vowels("ɛ: {fR1: 90 Hz, fR2: 450 Hz}")),
                 "demo.yaml:5:12: fR1 is 90 Hz, outside 150..1400 Hz"));
    CHECK(starts(error(vowels("ɛ: {fR1: 540 Hz ± 25, fR2: 178 Hz}")),
                 "demo.yaml:5:30: fR2 is 178 Hz, outside 400..4000 Hz"));
    CHECK(starts(error(vowels("ɛ: {" + good + ", fR3: 1700 Hz}")),
                 "demo.yaml:5:25: fR2 of /ɛ/ is 1780 Hz, not below its fR3"));
    CHECK(has(error(vowels("ɛ: {" + good + ", fR4: 3500 Hz}")), "has fR4 but no fR3"));
    CHECK(has(error(vowels("ɛ: {fR1: 540 Hz}")), "/ɛ/ has no fR2"));
    CHECK(has(error(vowels("ɛ: {F1: 540 Hz, F2: 1780 Hz}")),
              "unknown key \"F1\"\n  resonances of the tract are written fR1"));
    CHECK(has(error(vowels("ɛ: {" + good + ", colour: red}")), "unknown key \"colour\""));
    CHECK(has(error(vowels("ɛ: {" + good + ", fR1: 550 Hz}")), "\"fR1\" appears twice"));
    CHECK(has(error(vowels("ɛ: {" + good + "}\n  E: {" + good + "}")), "demo.yaml:6:3: /E/ appears twice"));
    CHECK(has(error(vowels("ɛ: {" + good + "}\n  ɛ: {" + good + "}")), "the first is on line 5"));
    CHECK(has(error(vowels("k: {" + good + "}")), "demo.yaml:5:3: \"k\" is not a vowel"));
    CHECK(has(error(vowels("ε: {" + good + "}")), "the letter ε only looks like an IPA letter; write ɛ"));
    CHECK(has(error(vowels("ɛ: 540")), "/ɛ/ must be keys with values"));
    CHECK(has(error(vowels("ɛ: {fR1: -540 Hz, fR2: 1780 Hz}")), "above 0 Hz"));
    CHECK(has(error(vowels("ɛ: {fR1: .nan, fR2: 1780 Hz}")), "neither a frequency nor a pitch"));
    CHECK(has(error(vowels("ɛ: {fR1: nan Hz, fR2: 1780 Hz}")), "neither a frequency nor a pitch"));
    CHECK(has(error(vowels("ɛ: {fR1: inf Hz, fR2: 1780 Hz}")), "neither a frequency nor a pitch"));
    CHECK(has(error(vowels("ɛ: {fR1: 540 kHz, fR2: 1780 Hz}")), "neither a frequency nor a pitch"));
    CHECK(has(error(vowels("ɛ: {fR1: 540 Hz ± 0, fR2: 1780 Hz}")), "a deviation must be above 0"));
    CHECK(has(error(vowels("ɛ: {fR1: 540 Hz ± -5, fR2: 1780 Hz}")), "a deviation must be above 0"));
    CHECK(has(error(vowels("ɛ: {fR1: 540 Hz ± 400, fR2: 1780 Hz}")), "more than half the value"));
    CHECK(has(error(vowels("ɛ: {fR1: 540 Hz ± much, fR2: 1780 Hz}")), "is not a deviation"));
    CHECK(has(error(vowels("ɛ: {fR1: C5 ± 15, fR2: 1780 Hz}")), "needs a unit\n  write ± 15 Hz or ± 15c"));
    CHECK(has(error(vowels("ɛ: {" + good + ", BR3: 60 Hz}")), "BR3 of /ɛ/ has no fR3"));
    CHECK(has(error(head), "the profile has no vowels"));
    CHECK(has(error(head + "vowels: {}\nrange: C5..B2\n"),
              "demo.yaml:5:8: the range C5..B2 begins with the higher pitch"));
    CHECK(has(error(head + "vowels: {}\ntract_length: 17\n"), "write the unit: 17.0 cm"));
    CHECK(has(error(head + "vowels: {}\ntract_length: 17 m\n"), "write the unit: 17.0 cm"));
    CHECK(has(error(head + "vowels: {}\ntract_length: 170 cm\n"), "outside 8..25 cm"));
    CHECK(has(error(head + "vowels: {}\na4: 44 Hz\n"), "a4 is 44 Hz, outside 380..500 Hz"));
    CHECK(has(error(head + "vowels: {}\naverage: maybe\n"), "write true or false"));
    CHECK(has(error(head + "vowels: {}\nsource: {method: telepathy}\n"), "\"telepathy\" is not a method"));
    CHECK(has(error(head + "vowels: {}\nsource: {date: 2026-02-29}\n"), "\"2026-02-29\" is not a date"));
    CHECK(has(error(head + "vowels: {}\nsource: {date: 3.10.2026}\n"), "is not a date"));
    CHECK(has(error(head + "vowels: {}\nhistory:\n  - {method: creak, fR1: 500, fR2: 1500}\n"),
              "a measurement without vowel"));
    CHECK(has(error(head + "vowels: {}\nshift:\n  whisper: {fR1: 210 Hz}\n"), "is not a shift"));
    CHECK(has(error("vowelway: 1\nvoice: falsettist\nvowels: {}\n"),
              "unknown voice \"falsettist\"\n  write one of bass, baritone"));
    CHECK(has(error("vowelway: 2\n"), "format version 2 is unknown"));
    CHECK(has(error("voice: tenor\n"), "begin the file with  vowelway: 1"));
    CHECK(has(error("vowelway: 1\ntempo: 60\n"), "unknown key \"tempo\""));
}

TEST_CASE("hostile and broken texts are refused") {
    CHECK(has(error(""), "the profile is empty"));
    CHECK(has(error("- 1\n- 2\n"), "a profile must be keys with values"));
    CHECK(has(error("vowelway: &a 1\nvoice: *a\n"), "demo.yaml:1:"));
    CHECK(has(error("vowelway: &a 1\nvoice: *a\n"), "anchors and aliases"));
    CHECK(has(error("a: &a {b: *a}\n"), "anchors and aliases"));
    CHECK(has(error("a: !!python/object:os.system x\n"), "the tag"));
    CHECK(has(error("a: [\n"), "is not YAML"));
    CHECK(
        starts(error("ɛɛɛ: \"x\" y\n"), "demo.yaml:1:10: is not YAML")); // the column in characters here too
    CHECK(has(error("vowelway: 1\nvowels:\n\t a: 1\n"), "is not YAML"));
    CHECK(has(error("vowelway: 1\nvowels: {}\n---\nvowelway: 1\n"), "a second document"));
    CHECK(has(error(std::string(5000, '[')), "nested more than 16 deep"));
    CHECK(has(error("? [1]\n: 2\n"), "a key must be a word"));
    std::string many = "a: [";
    for (int i = 0; i < 100'001; ++i) many += "1,";
    CHECK(has(error(many + "]\n"), "more than 100000 values"));
    std::string keys;
    for (int i = 0; i < 40'000; ++i) keys += "k" + std::to_string(i) + ": 1\n";
    CHECK(has(error(keys), "unknown key \"k0\""));
}

TEST_CASE("files that are no text are refused") {
    auto const folder = std::filesystem::temp_directory_path() / "vowelway_read_profile_test";
    std::filesystem::create_directories(folder);
    auto const path = folder / "p.yaml";
    auto const file_error = [&](std::string const& bytes) {
        std::ofstream(path, std::ios::binary) << bytes;
        try {
            read_profile(path);
        } catch (InputError const& e) {
            CHECK(e.place().file == path.string());
            return std::string(e.what());
        }
        return std::string("no error");
    };
    CHECK(has(file_error("vowelway: 1\nsinger: caf\xe9\n"), "p.yaml:2:12: is not UTF-8"));
    CHECK(has(file_error(std::string("vowelway\0: 1\n", 13)), "p.yaml:1:9: contains a control character"));
    CHECK(has(file_error("\x7F"
                         "ELF"),
              "control character"));
    CHECK(has(file_error(std::string(2 << 20, '#')), "larger than 1 MiB"));
    CHECK(has(file_error(""), "is empty"));
    CHECK_THROWS_WITH_AS(read_profile(folder), doctest::Contains("is a folder"), InputError);
    CHECK_THROWS_WITH_AS(read_profile(folder / "none.yaml"), doctest::Contains("there is no such file"),
                         InputError);
    std::filesystem::remove_all(folder);
}

// Swerdlin, Smith & Wolfe (2010), J. Acoust. Soc. Am. 127, 2590: spread between singers of the shift of fR1
// in whisper 90 Hz, in creak 50 Hz. Peterson & Barney (1952) and Hillenbrand et al. (1995): men differ by 6
// to 14 % in F1.
TEST_CASE("default deviations are those of the method") {
    auto const sd = [](Method m, int k, double centre) {
        return in_hertz(default_deviation(m, {k}, hertz(centre)));
    };
    CHECK(sd(Method::whisper, 1, 700) == doctest::Approx(90).epsilon(0.05));
    CHECK(sd(Method::creak, 1, 700) == doctest::Approx(50).epsilon(0.05));
    // The residual of a whispered fR1 of 700 Hz is 2.2 semitones, of a creaky one 1.2 (computed from the
    // paper's figures).
    CHECK(12 * std::log2(1 + sd(Method::whisper, 1, 700) / 700) == doctest::Approx(2.1).epsilon(0.06));
    CHECK(12 * std::log2(1 + sd(Method::creak, 1, 700) / 700) == doctest::Approx(1.2).epsilon(0.06));
    CHECK(sd(Method::published, 1, 500) > 0.06 * 500);
    CHECK(sd(Method::published, 1, 500) < 0.14 * 500);
    CHECK(sd(Method::typed, 1, 440) == doctest::Approx(26.16).epsilon(0.001)); // A4 to B♭4, 466.16 Hz
}
