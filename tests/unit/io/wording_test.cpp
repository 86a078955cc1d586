// SPDX-License-Identifier: MIT
// Each language says what the sources say: no sentence is missing, none stands in vain.
#include "vowelway/io/wording/read_wording.hpp"

#include "support/bare_refusals.hpp"
#include "support/sentences_in_sources.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/io/profile/built_in.hpp"

#include <doctest/doctest.h>

using namespace vowelway;

TEST_CASE("every sentence of the sources stands in every wording, and no other") {
    auto const said = test::sentences_of_the_program();
    REQUIRE(said.size() > 300);
    for (auto const& code : io::wording_codes()) {
        if (code == "en") continue;
        auto const wording = *io::built_in_wording(code);
        CHECK(wording.language == code);
        for (auto const& [sentence, file] : said) {
            INFO(code, " lacks: \"", sentence, "\" of ", file);
            CHECK(wording.sentences.contains(sentence));
        }
        for (auto const& [english, other] : wording.sentences) {
            INFO(code, ", in vain: \"", english, "\"");
            CHECK(said.contains(english));
            CHECK_FALSE(other.empty());
        }
    }
}

TEST_CASE("sentences are found in sources as the compiler reads them") {
    auto const here = std::filesystem::path(test::source_dir()) / "src/plan/exercises.cpp";
    auto const said = test::sentences_in(here, false);
    CHECK(said.contains("the top rings like the bottom, and no step is heard where the vowel changes"));
    CHECK_FALSE(said.contains("CDEFGAB")); // a text, but nothing that is said
}

TEST_CASE("every refusal and remark goes through the table") {
    for (auto const& bare : test::bare_refusals_of_the_program()) {
        INFO(bare);
        CHECK_MESSAGE(false, "say it with worded()");
    }
    auto const found = [](char const* source) { return test::BareRefusals(source).find().size(); };
    CHECK(found("throw InputError(\"no such bar\", worded(\"give another\"), {file, 0, 0, {}});") == 1);
    CHECK(found("throw yaml::error_at(node, 'x' + name + \" is missing here\", remedy);") == 1);
    CHECK(found("remarks.push_back({Remark::Kind::assumed, \"the first verse\"});") == 1);
    CHECK(found("throw InputError(worded(\"no such bar\"), worded(\"give {0}\", f(\"a b c\")));") == 0);
    CHECK(found("auto const x = f(\"no refusal at all\"); // InputError(\"in a remark\")") == 0);
}

TEST_CASE("English is built in and empty, German is not") {
    CHECK(io::built_in_wording("en")->sentences.empty());
    CHECK(io::built_in_wording("de")->sentences.at("hold") == "halten");
    CHECK_FALSE(io::built_in_wording("xx"));
}

TEST_CASE("a wording of one's own is read strictly, with place and remedy") {
    auto const good = io::parse_wording("language: xy\nsentences:\n  \"bar {0}\": \"{0}. Bar\"\n", "xy.yaml");
    CHECK(good.language == "xy");
    CHECK(good.sentences.at("bar {0}") == "{0}. Bar");
    auto const refused = [](char const* text) {
        try {
            io::parse_wording(text, "xy.yaml");
        } catch (InputError const& error) {
            return std::string(error.what());
        }
        return std::string("read");
    };
    CHECK(refused("language: xy\nsentences:\n  \"bar {0}\": \"Bar\"\n")
              .starts_with("xy.yaml:3:14: the places"));
    CHECK(refused("language: xy\n").find("needs its language and its sentences") != std::string::npos);
    CHECK(refused("language: xy\nsentences: {}\nwords: {}\n").starts_with("xy.yaml:3:1"));
    CHECK(refused("language: xy\nsentences: [a]\n").starts_with("xy.yaml:2"));
}

TEST_CASE("average voices have a name in every language") {
    for (auto const& code : io::wording_codes())
        for (auto const voice : all_voice_types)
            for (auto const vowels : {AverageVowels::spoken, AverageVowels::sung}) {
                set_wording({});
                auto const english = io::built_in_voice(voice, vowels).name;
                set_wording(*io::built_in_wording(code));
                CHECK((io::built_in_voice(voice, vowels).name == english) == (code == "en"));
                set_wording({});
            }
}
