// SPDX-License-Identifier: MIT
// The sung vowels against open pronunciations (tests/data/diction/MANIFEST.md). The samples are drawn from
// the half of each lexicon that no rule was looked up against, or are filtered to it here. The floors of the
// first six lie about one and a half percentage points of nuclei and two of counts below what was measured on
// the whole half (docs/diction.md): the error of a sample of 200 words; those of the others two points below
// the sample's own figure.
#include "support/diction_folding.hpp"
#include "support/source_dir.hpp"
#include "vowelway/diction/sing_words.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <string>
#include <vector>

using namespace vowelway;
using namespace vowelway::diction;

namespace {

struct Score {
    double nuclei = 0, counts = 0;
    std::size_t words = 0;
};

Score measure(Language language) {
    std::map<std::string, std::vector<std::string>> lexicon;
    std::ifstream file((vowelway::test::source_dir() + "/tests/data/diction/") + std::string(tag(language)) +
                       ".tsv");
    for (std::string line; std::getline(file, line);) {
        auto const tab = line.find('\t');
        REQUIRE(tab != std::string::npos);
        auto const word = line.substr(0, tab);
        if (folding::in_test_half(word)) lexicon[word].push_back(line.substr(tab + 1));
    }
    std::size_t edits = 0, length = 0, counted = 0;
    for (auto const& [word, alternatives] : lexicon) {
        auto const sung = transcribe(word, language);
        REQUIRE(sung.size() == 1);
        auto const heard = folding::nuclei(sung.front(), language);
        std::size_t best = 1000, best_length = 1;
        bool same = false;
        for (auto const& phones : folding::alternatives(alternatives, language)) {
            auto const wanted = folding::nuclei(phones, language);
            same = same || wanted.size() == heard.size();
            auto const distance = folding::edit_distance(heard, wanted);
            if (distance < best) {
                best = distance;
                best_length = wanted.size();
            }
        }
        edits += best;
        length += best_length;
        counted += same;
    }
    return {100 - 100.0 * static_cast<double>(edits) / static_cast<double>(length),
            100.0 * static_cast<double>(counted) / static_cast<double>(lexicon.size()), lexicon.size()};
}

} // namespace

TEST_CASE("nuclei of unseen words agree with an open lexicon") {
    struct Floor {
        Language language;
        double nuclei, counts;
        std::size_t words = 200;
    };
    for (auto const& [language, nuclei, counts, words] :
         {Floor{Language::italian, 98, 96}, Floor{Language::latin, 98.5, 97.5},
          Floor{Language::german, 91, 95.5}, Floor{Language::french, 96.5, 96.5},
          Floor{Language::english, 80, 92}, Floor{Language::spanish, 98.5, 97.5},
          Floor{Language::american_english, 74.5, 88.5}, Floor{Language::polish, 96.5, 96.5},
          Floor{Language::hungarian, 98, 98, 40}, Floor{Language::finnish, 95, 92, 52},
          Floor{Language::czech, 98, 98, 61}, Floor{Language::welsh, 96.5, 97, 78},
          Floor{Language::portuguese, 95.5, 97, 126}, Floor{Language::swedish, 93.5, 98, 115},
          Floor{Language::norwegian, 91, 94.5, 58}, Floor{Language::danish, 87.5, 97, 126}}) {
        CAPTURE(to_string(language));
        auto const score = measure(language);
        CHECK(score.words == words);
        CHECK(score.nuclei >= nuclei);
        CHECK(score.counts >= counts);
    }
}

// A word's stressed vowel decides what every o, a, e and я of Russian is.
TEST_CASE("the stress of unseen Russian words agrees with an open list") {
    std::map<std::string, std::vector<std::string>> lexicon;
    std::ifstream file(vowelway::test::source_dir() + "/tests/data/diction/ru.stress.tsv");
    for (std::string line; std::getline(file, line);) {
        auto const tab = line.find('\t');
        lexicon[line.substr(0, tab)].push_back(line.substr(tab + 1));
    }
    CHECK(lexicon.size() == 200);
    std::size_t words = 0, right = 0;
    for (auto const& [word, listed] : lexicon) {
        auto const sung = transcribe(word, Language::russian).front();
        if (sung.syllables.size() < 2) continue;
        auto const at = std::find_if(sung.syllables.begin(), sung.syllables.end(),
                                     [](auto const& s) { return s.stressed; });
        auto const ours = "stress " + std::to_string(at - sung.syllables.begin() + 1);
        ++words;
        right += std::find(listed.begin(), listed.end(), ours) != listed.end();
    }
    CHECK(words > 150);
    CHECK(100.0 * static_cast<double>(right) / static_cast<double>(words) >= 86);
}

TEST_CASE("the measure itself can fail: another language's rules do not pass") {
    std::size_t wrong = 0;
    for (auto const* word : {"vite", "dire", "pure", "monde", "rime", "pace", "cane", "luce"}) {
        auto const italian = folding::nuclei(transcribe(word, Language::italian).front(), Language::italian);
        auto const french = folding::nuclei(transcribe(word, Language::french).front(), Language::french);
        wrong += folding::edit_distance(italian, french) > 0;
    }
    CHECK(wrong == 8);
}
