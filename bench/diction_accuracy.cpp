// SPDX-License-Identifier: MIT
// How many sung vowels are right, against an open pronunciation lexicon.
//
//   diction_accuracy LEXICON.tsv LANGUAGE [tuning|test|all] [MISSES]
//
// The lexicon has a word and its phones (separated by spaces, tab between word and phones) on each line;
// several lines for a word are alternatives, the best counts. Words fall into a tuning and a test half by a
// hash of their letters; rules may be looked up against the first only. MISSES prints that many wrong words.
// The folding of notations is docs/diction.md's, done in tests/support/diction_folding.hpp.
#include "support/diction_folding.hpp"

#include "vowelway/diction/sing_words.hpp"

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <map>
#include <string>
#include <vector>

#include <fmt/format.h>

using namespace vowelway;

namespace {

std::string joined(folding::Nuclei const& nuclei) {
    std::string out;
    for (auto const& nucleus : nuclei) out += nucleus + " ";
    return out;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 3) {
        std::cerr << "usage: diction_accuracy LEXICON.tsv LANGUAGE [tuning|test|all] [MISSES]\n";
        return 2;
    }
    auto const language = diction::parse_language(argv[2]);
    if (!language) return 2;
    std::string const half = argc > 3 ? argv[3] : "test";
    int misses = argc > 4 ? std::atoi(argv[4]) : 0;
    std::map<std::string, std::vector<std::string>> lexicon;
    std::ifstream file(argv[1]);
    for (std::string line; std::getline(file, line);) {
        auto const tab = line.find('\t');
        if (tab == std::string::npos) continue;
        auto const word = line.substr(0, tab);
        if (half != "all" && (half == "test") != folding::in_test_half(word)) continue;
        lexicon[word].push_back(line.substr(tab + 1));
    }
    std::string text;
    for (auto const& [word, alternatives] : lexicon) text += word + "\n";
    auto const begin = std::chrono::steady_clock::now();
    auto const sung = diction::transcribe(text, *language);
    double const took = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    if (sung.size() != lexicon.size())
        std::cerr << fmt::format("{} words in, {} out\n", lexicon.size(), sung.size());

    std::size_t edits = 0, length = 0, counted = 0, guessed = 0, at = 0;
    folding::Quality quality;
    std::map<std::pair<std::string, std::string>, int> confusions;
    for (auto const& [word, alternatives] : lexicon) {
        if (at >= sung.size()) break;
        auto const& said = sung[at++];
        auto const heard = folding::nuclei(said, *language);
        guessed += said.guessed;
        bool same_count = false;
        std::size_t best = 1000, best_length = 1;
        folding::Nuclei best_wanted;
        for (auto const& phones : folding::alternatives(alternatives, *language)) {
            auto const wanted = folding::nuclei(phones, *language);
            same_count = same_count || wanted.size() == heard.size();
            auto const distance = folding::edit_distance(heard, wanted);
            if (distance < best) {
                best = distance;
                best_length = wanted.size();
                best_wanted = wanted;
            }
        }
        edits += best;
        length += best_length;
        counted += same_count;
        if (heard.size() == best_wanted.size())
            for (std::size_t i = 0; i < heard.size(); ++i)
                if (heard[i] != best_wanted[i]) ++confusions[{heard[i], best_wanted[i]}];
        if (*language == diction::Language::italian) folding::count_quality(said, alternatives, quality);
        if (best > 0 && misses > 0) {
            std::cout << fmt::format("{}: {} for {}\n", word, joined(heard), joined(best_wanted));
            --misses;
        }
    }
    auto const share = [](std::size_t part, std::size_t whole) {
        return 100.0 * static_cast<double>(part) / static_cast<double>(std::max<std::size_t>(whole, 1));
    };
    std::cout << fmt::format("{} ({} half): {} words; nuclei right {:.2f} %, words with the right number "
                             "{:.2f} %, guessed {:.1f} %; {:.0f} words/s\n",
                             to_string(*language), half, lexicon.size(), 100 - share(edits, length),
                             share(counted, lexicon.size()), share(guessed, lexicon.size()),
                             static_cast<double>(sung.size()) / took);
    if (quality.syllables)
        std::cout << fmt::format("  open or closed e and o where stressed: {:.2f} % of {} right ({:.2f} % of "
                                 "those listed open, {:.2f} % closed)\n",
                                 share(quality.right, quality.syllables), quality.syllables,
                                 share(quality.open_right, quality.open),
                                 share(quality.right - quality.open_right, quality.syllables - quality.open));
    std::vector<std::pair<int, std::pair<std::string, std::string>>> ranked;
    for (auto const& [pair, count] : confusions) ranked.push_back({count, pair});
    std::sort(ranked.rbegin(), ranked.rend());
    if (ranked.size() > 16) ranked.resize(16);
    for (auto const& [count, pair] : ranked)
        std::cout << fmt::format("  {} for {}: {}\n", pair.first, pair.second, count);
}
