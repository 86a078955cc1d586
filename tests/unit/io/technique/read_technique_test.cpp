// SPDX-License-Identifier: MIT
#include "vowelway/core/error.hpp"
#include "vowelway/io/technique/read_technique.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::io;

namespace {
std::string message(std::string const& text) {
    try {
        parse_technique(text, "t.yaml");
    } catch (InputError const& error) {
        return error.what();
    }
    return "";
}
} // namespace

TEST_CASE(
    "the techniques that come with the program can be read, name themselves and say where they come from") {
    REQUIRE(technique_names().size() >= 3);
    for (auto const& name : technique_names()) {
        auto const t = find_technique(name);
        CHECK(t.name == name);
        CHECK_FALSE(t.description.empty());
        CHECK_FALSE(t.sources.empty());
    }
    CHECK(find_technique("belt").relations.size() == 1);
}

TEST_CASE("a technique of one's own: what is left out is as in the default") {
    auto const t = parse_technique(
        "vowelway: 1\ntechnique: mine\nweights: {text: 1.5}\nlevel: {per_octave: 9 dB}\n"
        "relations:\n  - {harmonic: 3, side: above fR1, weight: 0.1, after_turn: true, from: C4}\n",
        "t.yaml");
    CHECK(t.text == 1.5);
    CHECK(t.ring == Technique{}.ring);
    CHECK(t.level_per_octave.value == 9);
    REQUIRE(t.relations.size() == 1);
    CHECK(t.relations[0].harmonic.number == 3);
    CHECK(t.relations[0].side == WantedRelation::Side::above);
    CHECK(t.relations[0].after_turn_only);
    CHECK(t.relations[0].from == Tuning{}.pitch(60.0));
    CHECK_FALSE(t.relations[0].to);
}

TEST_CASE("bad techniques: file, line, column, what is wrong, how to mend it") {
    std::string const head = "vowelway: 1\ntechnique: mine\n";
    CHECK(message("technique: mine\n").find("vowelway: 1") != std::string::npos);
    CHECK(message(head + "wieghts: {text: 1}\n").starts_with("t.yaml:3:1: "));
    CHECK(message(head + "weights: {text: -1}\n").find("outside 0..10") != std::string::npos);
    CHECK(message(head + "weights: {text: nan}\n").starts_with("t.yaml:3:"));
    CHECK(message(head + "level: {per_octave: 9}\n").find("dB") != std::string::npos);
    CHECK(message(head + "source: {upper_begins: 900 Hz, upper_complete: 800 Hz}\n").find("not above") !=
          std::string::npos);
    CHECK(message(head + "relations:\n  - {harmonic: 2, side: beside fR1, weight: 1}\n")
              .find("below fR1 or above fR1") != std::string::npos);
    CHECK(message(head + "relations:\n  - {side: below fR1}\n").find("needs harmonic") != std::string::npos);
    CHECK_THROWS_AS(find_technique("no such technique"), InputError);
}
