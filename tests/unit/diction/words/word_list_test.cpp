// SPDX-License-Identifier: MIT
#include "vowelway/core/error.hpp"
#include "vowelway/diction/sing_words.hpp"
#include "vowelway/diction/word_list.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::diction;

TEST_CASE("a word list is read strictly, with file and place") {
    auto const read = [](std::string const& text) -> std::string {
        try {
            return std::to_string(parse_word_list(text, "w.yaml").size()) + " words";
        } catch (InputError const& error) {
            CHECK_FALSE(error.remedy().empty());
            return std::string(error.what()).substr(0, std::string(error.what()).find('\n'));
        }
    };
    std::string const head = "vowelway: 1\nwords:\n";
    CHECK(read(head + "  amor: amor\n  dolce: doltʃe\n") == "2 words");
    CHECK(read(head + "  amor: amor\n  amor: amɔr\n") == "w.yaml:4:3: \"amor\" appears twice");
    CHECK(read(head + "  amor: &a amor\n  amore: *a\n") ==
          "w.yaml:3:9: anchors and aliases (& and *) are not supported");
    CHECK(read(head + "  caf\xE9: kafe\n") == "w.yaml:3:6: is not UTF-8");
    CHECK(read(head + "  pst: pst\n") == "w.yaml:3:8: the pronunciation of \"pst\" has no vowel");
    CHECK(read(head + "  amor: [a, o]\n") == "w.yaml:3:3: a word has no pronunciation");
    CHECK(read("vowelway: 2\n") == "w.yaml:1:11: this format version is not known");
    CHECK(read("amor: amor\n") == "w.yaml:1:1: \"amor\" is unknown in a word list");
    CHECK(read("- amor\n") == "w.yaml:1:1: this is not a word list");
    CHECK(read("vowelway: 1\nwords: [\n").starts_with("w.yaml:3:1: is not YAML"));
    CHECK(read(std::string((1 << 20) + 1, '#')) == "w.yaml: the file is larger than 1 MiB");
}

TEST_CASE("the teacher's word list wins") {
    DictionOptions options;
    options.words.add("Sospiro", "sɔ.spi.rɔ");
    auto const words = transcribe("sospiro, SOSPIRO", Language::italian, options);
    REQUIRE(words.size() == 2);
    for (auto const& word : words) {
        REQUIRE(word.syllables.size() == 3);
        CHECK(word.syllables[0].ipa == "ɔ");
        CHECK(word.syllables[0].vowel.origin == VowelOrigin::override_);
    }
    CHECK_THROWS_AS(options.words.add("x", "pst"), InputError);
}
