// SPDX-License-Identifier: MIT
#include "vowelway/io/plan/read_targets.hpp"

#include "vowelway/core/error.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace vowelway;

namespace {

std::string note(std::string const& r1, std::string const& r2 = "1800", std::string const& ipa = "\"e\"",
                 std::string const& rest = "\"duration_s\": 1, \"measure\": \"4\"") {
    return "{\"ipa\": " + ipa + ", \"target\": {\"fR1_hz\": " + r1 + ", \"fR2_hz\": " + r2 +
           ", \"ipa\": \"e\"}, " + rest + "}";
}

std::string plan(std::string const& notes) { return "{\"vowelway\": 1, \"notes\": [" + notes + "]}"; }

std::string what_is_wrong(std::string const& json) {
    try {
        io::parse_plan_targets(json, "plan.json");
    } catch (InputError const& error) {
        return error.place().str() + ": " + error.wrong();
    }
    return "";
}

} // namespace

TEST_CASE("notes of one target are one, the longest sung first, with their bars") {
    auto const targets = io::parse_plan_targets(
        plan(note("402") + "," + note("398", "1803", "\"e\"", "\"duration_s\": 2, \"measure\": \"5\"") + "," +
             note("500", "1800", "\"e\"", "\"duration_s\": 9, \"measure\": \"6\"") + ",{\"ipa\": null}"),
        "plan.json");
    REQUIRE(targets.size() == 2);
    CHECK(targets[0].r1 == hertz(500));
    CHECK(targets[1].r1 == hertz(400));
    CHECK(in_seconds(targets[1].sung) == doctest::Approx(3));
    CHECK(targets[1].bars == std::vector<std::string>{"4", "5"});
    CHECK(targets[1].vowel == parse_vowel("e"));
}

TEST_CASE("a plan of a range has no targets") { CHECK(io::parse_plan_targets(plan(""), "p").empty()); }

TEST_CASE("resonances that no tract has are refused with the note") {
    for (auto const* bad : {"0", "-400", "1e300", "1e400", "\"400\"", "null", "[]", "true", "49.9"}) {
        INFO(bad);
        CHECK(what_is_wrong(plan(note("400") + "," + note(bad))).find("plan.json") == 0);
        CHECK(what_is_wrong(plan(note("400", bad))) != "");
    }
    CHECK(what_is_wrong(plan(note("400") + "," + note("0"))) ==
          "plan.json, note 2: \"fR1_hz\" is 0; it must be from 50 to 6000 Hz");
    CHECK(what_is_wrong(plan(note("400", "1e300"))) ==
          "plan.json, note 1: \"fR2_hz\" is 1e+300; it must be from 100 to 8000 Hz");
}

TEST_CASE("what is no plan is refused with its place") {
    CHECK(what_is_wrong("{\"vowelway\": 1,\n \"notes\": [,]}") ==
          "plan.json:2:12: is not JSON: it breaks off or goes wrong here");
    CHECK(what_is_wrong("") == "plan.json:1:1: is not JSON: it breaks off or goes wrong here");
    CHECK(what_is_wrong("[]") == "plan.json: is not the JSON of a plan");
    CHECK(what_is_wrong("{\"notes\": []}").find("vowelway") != std::string::npos);
    CHECK(what_is_wrong("{\"vowelway\": 2, \"notes\": []}").find("vowelway") != std::string::npos);
    for (auto const* notes : {"7", "{}", "\"a\"", "null"})
        CHECK(what_is_wrong("{\"vowelway\": 1, \"notes\": " + std::string(notes) + "}") ==
              "plan.json: is not the JSON of a plan: it has no list \"notes\"");
    CHECK(what_is_wrong(plan("3")) == "plan.json, note 1: a note is not an object");
    CHECK(what_is_wrong(plan("{\"ipa\": \"e\", \"target\": 4}")) ==
          "plan.json, note 1: \"target\" must be an object");
}

TEST_CASE("unknown vowels, other kinds of value and impossible times are refused with the note") {
    CHECK(what_is_wrong(plan(note("400", "1800", "\"q\""))) == "plan.json, note 1: \"q\" is not a vowel");
    CHECK(what_is_wrong(plan(note("400", "1800", "5"))) == "plan.json, note 1: \"ipa\" must be a text");
    for (auto const* rest :
         {"\"duration_s\": -1", "\"duration_s\": 1e300", "\"duration_s\": \"1\"", "\"measure\": 4"}) {
        INFO(rest);
        CHECK(what_is_wrong(plan(note("400", "1800", "\"e\"", rest))).find("plan.json, note 1: ") == 0);
    }
}

TEST_CASE("the tree of a plan is bounded before it is built") {
    auto const many = [](std::size_t n, std::string const& text) {
        std::string out;
        for (std::size_t i = 0; i < n; ++i) out += text;
        return out;
    };
    CHECK(what_is_wrong(plan(many(30, "[") + many(30, "]"))).find("note 1") != std::string::npos);
    CHECK(what_is_wrong(plan(many(31, "[") + many(31, "]"))).find("nested more than 32 deep") !=
          std::string::npos);
    CHECK(what_is_wrong(many(1'000'000, "[")).find("nested more than 32 deep") != std::string::npos);
    CHECK(what_is_wrong(plan(many(io::most_plan_values, "0,") + "0")).find("4000000 values") !=
          std::string::npos);
}
