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

using Lexicon = std::map<std::string, std::vector<std::string>>; // word -> its pronunciations

Lexicon read_lexicon(char const* path, std::string const& half) {
    Lexicon lexicon;
    std::ifstream file(path);
    for (std::string line; std::getline(file, line);) {
        auto const tab = line.find('\t');
        if (tab == std::string::npos) continue;
        auto const word = line.substr(0, tab);
        if (half != "all" && (half == "test") != folding::in_test_half(word)) continue;
        lexicon[word].push_back(line.substr(tab + 1));
    }
    return lexicon;
}

/// The alternative that is nearest to what was heard.
struct Nearest {
    std::size_t distance = 1000, length = 1;
    folding::Nuclei wanted;
    bool same_count = false; ///< any alternative has as many nuclei
};

Nearest nearest(folding::Nuclei const& heard, std::vector<std::string> const& alternatives,
                diction::Language language) {
    Nearest best;
    for (auto const& phones : folding::alternatives(alternatives, language)) {
        auto const wanted = folding::nuclei(phones, language);
        best.same_count = best.same_count || wanted.size() == heard.size();
        auto const distance = folding::edit_distance(heard, wanted);
        if (distance < best.distance) {
            best.distance = distance;
            best.length = wanted.size();
            best.wanted = wanted;
        }
    }
    return best;
}

double share(std::size_t part, std::size_t whole) {
    return 100.0 * static_cast<double>(part) / static_cast<double>(std::max<std::size_t>(whole, 1));
}

/// Of a list of stresses ("WORD<TAB>stress N", of its vowels the Nth): how often ours is among those listed.
void print_stress(Lexicon const& lexicon, std::vector<SungWord> const& sung, int misses) {
    std::size_t at = 0, words = 0, right = 0;
    for (auto const& [word, listed] : lexicon) {
        auto const& syllables = sung.at(at++).syllables;
        if (syllables.size() < 2) continue;
        auto const stressed =
            std::find_if(syllables.begin(), syllables.end(), [](auto const& s) { return s.stressed; });
        auto const ours = "stress " + std::to_string(stressed - syllables.begin() + 1);
        ++words;
        bool const agrees =
            stressed != syllables.end() && std::find(listed.begin(), listed.end(), ours) != listed.end();
        right += agrees;
        if (!agrees && misses-- > 0) std::cout << fmt::format("{}: {} for {}\n", word, ours, listed.front());
    }
    std::cout << fmt::format("stress of words of two syllables or more: {:.2f} % of {} right\n",
                             share(right, words), words);
}

/// What is counted over a lexicon.
struct Count {
    std::size_t edits = 0, length = 0, counted = 0, guessed = 0;
    folding::Quality quality = {};
    std::map<std::pair<std::string, std::string>, int> confusions = {};

    void add(folding::Nuclei const& heard, Nearest const& best) {
        edits += best.distance;
        length += best.length;
        counted += best.same_count;
        if (heard.size() == best.wanted.size())
            for (std::size_t i = 0; i < heard.size(); ++i)
                if (heard[i] != best.wanted[i]) ++confusions[{heard[i], best.wanted[i]}];
    }

    void print_quality() const {
        if (quality.syllables)
            std::cout << fmt::format(
                "  open or closed e and o where stressed: {:.2f} % of {} right ({:.2f} % of "
                "those listed open, {:.2f} % closed)\n",
                share(quality.right, quality.syllables), quality.syllables,
                share(quality.open_right, quality.open),
                share(quality.right - quality.open_right, quality.syllables - quality.open));
    }

    void print_confusions() const {
        std::vector<std::pair<int, std::pair<std::string, std::string>>> ranked;
        for (auto const& [pair, count] : confusions) ranked.push_back({count, pair});
        std::sort(ranked.rbegin(), ranked.rend());
        if (ranked.size() > 16) ranked.resize(16);
        for (auto const& [count, pair] : ranked)
            std::cout << fmt::format("  {} for {}: {}\n", pair.first, pair.second, count);
    }
};

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
    auto const lexicon = read_lexicon(argv[1], half);
    auto const begin = std::chrono::steady_clock::now();
    std::vector<SungWord> sung;
    std::string text; // a part of the list: a text has a bound
    auto const flush = [&] {
        auto part = diction::transcribe(text, *language);
        sung.insert(sung.end(), part.begin(), part.end());
        text.clear();
    };
    for (auto const& [word, alternatives] : lexicon) {
        text += word + "\n";
        if (text.size() > 500'000) flush();
    }
    flush();
    double const took = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    if (sung.size() != lexicon.size())
        std::cerr << fmt::format("{} words in, {} out\n", lexicon.size(), sung.size());

    if (!lexicon.empty() && lexicon.begin()->second.front().starts_with("stress ")) {
        print_stress(lexicon, sung, misses);
        return 0;
    }
    Count count;
    std::size_t at = 0;
    for (auto const& [word, alternatives] : lexicon) {
        if (at >= sung.size()) break;
        auto const& said = sung[at++];
        auto const heard = folding::nuclei(said, *language);
        auto const best = nearest(heard, alternatives, *language);
        count.guessed += said.guessed;
        count.add(heard, best);
        if (*language == diction::Language::italian)
            folding::count_quality(said, alternatives, count.quality);
        if (best.distance > 0 && misses > 0) {
            std::cout << fmt::format("{}: {} for {}\n", word, joined(heard), joined(best.wanted));
            --misses;
        }
    }
    std::cout << fmt::format("{} ({} half): {} words; nuclei right {:.2f} %, words with the right number "
                             "{:.2f} %, guessed {:.1f} %; {:.0f} words/s\n",
                             to_string(*language), half, lexicon.size(),
                             100 - share(count.edits, count.length), share(count.counted, lexicon.size()),
                             share(count.guessed, lexicon.size()), static_cast<double>(sung.size()) / took);
    count.print_quality();
    count.print_confusions();
}
