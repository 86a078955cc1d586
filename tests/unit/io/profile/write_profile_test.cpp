// SPDX-License-Identifier: MIT
#include "support/scratch_folder.hpp"
#include "support/source_dir.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/io/profile/write_profile.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <random>
#include <set>
#include <span>
#include <sstream>
#include <string>
#include <thread>
#include <vector>

using namespace vowelway;
using namespace vowelway::io;
using test::bytes_of;

namespace {

Measurement measured(char const* vowel, double r1, double r2) {
    Measurement m;
    m.date = "2026-11-02";
    m.method = Method::creak;
    m.vowel = parse_vowel(vowel);
    m.probes = 3;
    m.r1 = {hertz(r1), hertz(20), false, {}};
    m.r2 = {hertz(r2), hertz(50), false, {}};
    m.heard[0] = hertz(r1 + 45);
    m.note = "after \"the\" cold";
    return m;
}

std::string const profile = "# my voice\n"
                            "vowelway: 1\n"
                            "voice: tenor   # so they say\n"
                            "source: {method: whisper, date: 2026-10-03}\n"
                            "vowels:\n"
                            "  # the front ones\n"
                            "  i: {fR1: 300 Hz ± 15, fR2: 2250 Hz ± 60}  # bright\n"
                            "  ɛ: {fR1: 540, fR2: 1780 ± 60, fR3: 2550}\n"
                            "\n"
                            "  a:\n"
                            "    fR1: F5 +20c   # as sung to the teacher\n"
                            "    fR2: D#6\n"
                            "    fR3: 2600 Hz\n"
                            "# the end\n";

} // namespace

TEST_CASE("a measurement goes into the history and becomes the current value, comments and old values stay") {
    auto const once = with_measurement(profile, "p.yaml", measured("i", 320, 2200));
    CHECK(once == "# my voice\n"
                  "vowelway: 1\n"
                  "voice: tenor   # so they say\n"
                  "source: {method: whisper, date: 2026-10-03}\n"
                  "vowels:\n"
                  "  # the front ones\n"
                  "  i: {fR1: 320 Hz ± 20, fR2: 2200 Hz ± 50}  # bright\n"
                  "  ɛ: {fR1: 540, fR2: 1780 ± 60, fR3: 2550}\n"
                  "\n"
                  "  a:\n"
                  "    fR1: F5 +20c   # as sung to the teacher\n"
                  "    fR2: D#6\n"
                  "    fR3: 2600 Hz\n"
                  "# the end\n"
                  "history:\n"
                  "  - {date: 2026-10-03, method: whisper, vowel: i, probes: 1, fR1: 300 Hz ± 15, fR2: 2250 "
                  "Hz ± 60, note: \"was in the profile before\"}\n"
                  "  - {date: 2026-11-02, method: creak, vowel: i, probes: 3, fR1: 320 Hz ± 20, fR2: 2200 Hz "
                  "± 50, F1: 365 Hz, note: \"after \\\"the\\\" cold\"}\n");

    // A second one finds the first in the history already.
    auto const twice = with_measurement(once, "p.yaml", measured("i", 330, 2210));
    CHECK(parse_profile(twice, "p").history.size() == 3);
    CHECK(parse_profile(twice, "p").history[2].note == "after \"the\" cold");
    CHECK(twice.find("  i: {fR1: 330 Hz ± 20, fR2: 2210 Hz ± 50}  # bright\n") != std::string::npos);
}

TEST_CASE("an entry in block style, a new vowel, and a resonance that was not measured again") {
    auto text = with_measurement(profile, "p.yaml", measured("a", 700, 1250));
    CHECK(text.find("  a:\n"
                    "    fR1: 700 Hz ± 20   # as sung to the teacher\n"
                    "    fR2: 1250 Hz ± 50\n"
                    "# the end\n") != std::string::npos);
    CHECK(parse_profile(text, "p").history[0].r3); // kept where it was measured

    text = with_measurement(text, "p.yaml", measured("õ", 450, 900));
    CHECK(text.find("    fR2: 1250 Hz ± 50\n  o\u0303: {fR1: 450 Hz ± 20, fR2: 900 Hz ± 50}\n# the end\n") !=
          std::string::npos);

    auto with_third = measured("ɛ", 550, 1800);
    with_third.r3 = Resonance{hertz(2500), hertz(80), false, hertz(120)};
    text = with_measurement(text, "p.yaml", with_third);
    CHECK(text.find("  ɛ: {fR1: 550 Hz ± 20, fR2: 1800 Hz ± 50, BR3: 120 Hz, fR3: 2500 Hz ± 80}\n") !=
          std::string::npos);
}

TEST_CASE("flow style, an empty history and a file without a final line break") {
    for (std::string const history :
         {"", "\nhistory:", "\nhistory: []", "\nhistory:  # none yet",
          "\nhistory: [{date: 2026-01-01, method: sung, vowel: a, fR1: 700, fR2: 1200}]"}) {
        CAPTURE(history);
        auto const text =
            "vowelway: 1\nvowels: {a: {fR1: 710, fR2: 1210}, e: {fR1: 400, fR2: 2000}}" + history;
        auto const before = parse_profile(text, "p.yaml").history.size();
        auto const after =
            parse_profile(with_measurement(with_measurement(text, "p.yaml", measured("a", 690, 1190)),
                                           "p.yaml", measured("u", 320, 800)),
                          "p.yaml");
        CHECK(after.singer.vowels.size() == 3);
        CHECK(after.history.size() == before + 3);
        CHECK(in_hertz(after.singer.find(parse_vowel("a"))->r1.centre) == 690);
    }
}

TEST_CASE("a file with Windows line ends keeps them") {
    auto const after = with_measurement("vowelway: 1\r\nvowels:\r\n  a: {fR1: 710, fR2: 1210}  # low\r\n",
                                        "p.yaml", measured("u", 320, 800));
    CHECK(after.find("  # low\r\n  u: {fR1: 320 Hz ± 20, fR2: 800 Hz ± 50}\r\nhistory:\r\n  - {date") !=
          std::string::npos);
    for (std::size_t i = 0; i < after.size(); ++i)
        if (after[i] == '\n') CHECK(after[i - 1] == '\r');
}

TEST_CASE("an estimated value gives way without a trace, an average voice does not grow") {
    auto const text =
        with_measurement("vowelway: 1\nvowels:\n  ɐ: {estimated: \"between\", fR1: 600, fR2: 1400}\n",
                         "p.yaml", measured("ɐ", 620, 1390));
    CHECK(text.find("  ɐ: {fR1: 620 Hz ± 20, fR2: 1390 Hz ± 50}\nhistory:\n  - {date: 2026-11-02") !=
          std::string::npos);
    CHECK_THROWS_WITH_AS(
        with_measurement("vowelway: 1\naverage: true\nvowels: {}\n", "p.yaml", measured("a", 700, 1200)),
        doctest::Contains("it is an average voice"), InputError);
    // What no voice has is not written either.
    CHECK_THROWS_AS(with_measurement(profile, "p.yaml", measured("a", 1500, 1600)), InputError);
    CHECK_THROWS_AS(with_measurement(profile, "p.yaml", measured("a", 1300, 1200)), InputError);
}

TEST_CASE("the singer's own shift is set and replaced") {
    ProbeShift shift;
    shift.of[0] = {hertz(210), hertz(60)};
    shift.of[1] = {hertz(-12.5), hertz(80)};
    shift.pairs = 2;
    auto const once = with_shift(profile, "p.yaml", shift);
    CHECK(once == profile + "shift:\n  whisper: {fR1: 210 Hz ± 60, fR2: -12.5 Hz ± 80, pairs: 2}\n");
    shift.of[0] = {hertz(230), hertz(50)};
    shift.date = "2026-11-02";
    auto const twice = with_shift(once, "p.yaml", shift);
    CHECK(twice ==
          profile +
              "shift:\n  whisper: {fR1: 230 Hz ± 50, fR2: -12.5 Hz ± 80, pairs: 2, date: 2026-11-02}\n");
    shift.recordings = {"00ff00ff00ff00ff", "0123456789abcdef"};
    CHECK(parse_profile(with_shift(twice, "p.yaml", shift), "p.yaml").shifts[0].recordings ==
          shift.recordings);
    shift.method = Method::creak;
    CHECK(parse_profile(with_shift(twice, "p.yaml", shift), "p.yaml").shifts.size() == 2);
}

TEST_CASE("what is written reads back the same") {
    auto const singer = built_in_voice(VoiceType::soprano);
    Profile whole{singer, {measured("a", 800, 1400)}, {}};
    whole.singer.average = false;
    whole.singer.name = "Demo \"soprano\"";
    auto const text = profile_text(whole);
    auto const back = parse_profile(text, "p.yaml");
    CHECK(profile_text(back) == text);
    CHECK(back.singer.name == whole.singer.name);
    CHECK(back.singer.vowels.size() == singer.vowels.size());
    CHECK(back.history.size() == 1);
}

TEST_CASE("on disk: begun once, then only extended") {
    test::ScratchFolder const folder;
    auto const path = folder / "me.yaml";
    Profile begun = parse_profile(profile, "p.yaml");
    CHECK(begin_profile(path, begun));
    auto const as_begun = bytes_of(path);
    begun.singer.name = "Another";
    CHECK_FALSE(begin_profile(path, begun));
    CHECK(bytes_of(path) == as_begun);
    Measurement const one[] = {measured("a", 700, 1250)};
    ProbeShift const shift[] = {
        {Method::creak, {ShiftOfResonance{hertz(40), hertz(30)}, {}, {}, {}}, 1, "", {}}};
    extend_profile(path, one, shift);
    CHECK(read_whole_profile(path).history.size() == 2);
    CHECK(read_whole_profile(path).shifts.size() == 1);
    CHECK_THROWS_AS(extend_profile(folder / "none.yaml", one), InputError);
    CHECK(folder.entries() == 1);
}

TEST_CASE("what could not be read again is refused before it is written") {
    test::ScratchFolder const folder;
    auto const path = folder.put("me.yaml", profile);
    auto const refused = [&](Measurement const& m) {
        CHECK_THROWS_AS(extend_profile(path, std::span(&m, 1)), InputError);
        CHECK(bytes_of(path) == profile);
        CHECK(folder.entries() == 1);
    };
    auto m = measured("a", 700, 1250);
    m.note = "caf\xE9";
    refused(m);
    m.note = std::string("nul\0", 4);
    refused(m);
    m.note = "";
    m.date = "2026-01-01, note: x";
    refused(m);
    m.date = "2026-01-01";
    m.note = std::string(1 << 20, 'n');
    CHECK_THROWS_WITH_AS(extend_profile(path, std::span(&m, 1)), doctest::Contains("1 MiB"), InputError);
    refused(m);
    Profile begun = parse_profile(profile, "p.yaml");
    begun.singer.name = "caf\xE9";
    CHECK_THROWS_AS((void)begin_profile(folder / "new.yaml", begun), InputError);
    CHECK(folder.entries() == 1);
}

TEST_CASE("of writers that extend one profile at once none loses a measurement") {
    test::ScratchFolder const folder;
    auto const path = folder.put("me.yaml", profile);
    auto const before = read_whole_profile(path).history.size();
    {
        std::vector<std::jthread> writers;
        for (int w = 0; w < 6; ++w)
            writers.emplace_back([&, w] {
                for (int i = 0; i < 5; ++i) {
                    auto const m = measured("a", 650 + 10 * w + i, 1250);
                    extend_profile(path, std::span(&m, 1));
                }
            });
    }
    auto const after = read_whole_profile(path);
    std::set<long> values;
    for (auto const& m : after.history) values.insert(std::lround(in_hertz(m.r1.centre)));
    for (int w = 0; w < 6; ++w)
        for (int i = 0; i < 5; ++i) CHECK(values.contains(650 + 10 * w + i));
    CHECK(after.history.size() >= before + 30);
    CHECK(folder.entries() == 1);
}

TEST_CASE("the example of the documentation is a profile, and grows") {
    std::ifstream in(vowelway::test::source_dir() + "/docs/profile-format.md");
    std::stringstream all;
    all << in.rdbuf();
    auto const text = all.str();
    auto const begin = text.find("```yaml\n"), end = text.find("\n```", begin + 8);
    REQUIRE(begin != std::string::npos);
    REQUIRE(end != std::string::npos);
    auto const example = text.substr(begin + 8, end - begin - 7);
    auto const read = parse_profile(example, "example");
    CHECK(read.singer.vowels.size() == 4);
    CHECK(read.history.size() == 1);
    CHECK(read.shifts.size() == 1);
    CHECK(parse_profile(with_measurement(example, "example", measured("i", 320, 2200)), "example")
              .history.size() == 2);
    CHECK(parse_profile(with_measurement(example, "example", measured("a", 720, 1250)), "example")
              .history.size() == 3);
}

// Whatever bytes stand in a file: it is read, or refused with a place; and what can be read can grow, or says
// why not.
TEST_CASE("damaged profiles are refused, never followed") {
    std::mt19937 random(1);
    std::string const pieces[] = {"{",   "}", "[",    "]",  ":",     ",",    "#",  "\n",  " ",
                                  "  ",  "-", "\"",   "'",  "&a",    "*a",   "!x", "|",   ">",
                                  "%",   "?", "± ",   "±",  "Hz",    "9e99", "-1", "nan", "\t",
                                  "fR1", "i", "\xCC", "\r", "---\n", "...\n"};
    auto const whole = with_measurement(profile, "p.yaml", measured("i", 320, 2200));
    int read = 0, refused = 0;
    for (int round = 0; round < 300; ++round) {
        std::string text = whole;
        for (int change = static_cast<int>(random() % 3); change >= 0; --change) {
            auto const at = random() % text.size();
            if (random() % 3 == 0)
                text.erase(at, 1 + random() % 5);
            else
                text.insert(at, pieces[random() % std::size(pieces)]);
        }
        try {
            parse_profile(text, "p.yaml");
            ++read;
        } catch (InputError const& e) {
            CHECK(e.place().file == "p.yaml");
            ++refused;
            continue;
        }
        try {
            auto const grown = with_measurement(text, "p.yaml", measured("e", 400, 2000));
            CHECK(parse_profile(grown, "p.yaml").history.size() >
                  parse_profile(text, "p.yaml").history.size());
        } catch (InputError const&) {
        }
    }
    CHECK(read > 20);
    CHECK(refused > 20);
}
