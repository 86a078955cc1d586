// SPDX-License-Identifier: MIT
// Lessons, and the plan in lines.
#include "support/sample_plan.hpp"
#include "vowelway/plan/pencil.hpp"
#include "vowelway/report/lesson_report.hpp"
#include "vowelway/report/linear_report.hpp"
#include "vowelway/report/plan_report.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

using namespace vowelway;

TEST_CASE("a lesson as text and JSON tells the same phrases and exercises") {
    auto const lesson = plan::lesson_of(sample::song_plan());
    auto const text = report::lesson_text(lesson);
    auto const json = nlohmann::json::parse(report::lesson_json(lesson));
    REQUIRE(json["phrases"].size() == lesson.phrases.size());
    REQUIRE(json["exercises"].size() == lesson.exercises.size());
    for (auto const& phrase : json["phrases"])
        CHECK(text.find(phrase["words"].get<std::string>()) != std::string::npos);
    for (auto const& exercise : json["exercises"]) {
        CHECK(text.find(exercise["how"].get<std::string>()) != std::string::npos);
        CHECK(exercise["notes"].size() == exercise["sung"].size());
    }
    CHECK(json["in_brief"].size() == 3);
    CHECK(text.find(report::voice_caution) != std::string::npos);
}

TEST_CASE("a plan in lines has no columns, says each pencilled thing once, and names pitches in words") {
    auto const plan = sample::song_plan();
    auto const text = report::plan_linear(plan);
    auto const pencil = plan::pencil_of(plan);
    CHECK(text.starts_with("Sera di prova, by invented for the tests.\n"));
    CHECK(text.find("  ") == std::string::npos);
    for (char const* sign : {"♯", "♭", "±", "·", "→", "fR1"}) CHECK(text.find(sign) == std::string::npos);
    std::size_t lines = 0;
    for (auto at = text.find("\nBar "); at != std::string::npos; at = text.find("\nBar ", at + 1)) ++lines;
    CHECK(lines == pencil.marks.size());
    CHECK(text.find("turns over near A flat 3") != std::string::npos);
}
