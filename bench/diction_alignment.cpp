// SPDX-License-Identifier: MIT
// How many written syllables of real songs get their vowel without doubt.
//
//   diction_alignment FOLDER [WORDS]
//
// Reads every score of the folder, sets the vowels and prints a line for each with the language taken, the
// syllables and those aligned without doubt; with any second argument also what was guessed.
#include "vowelway/core/error.hpp"
#include "vowelway/diction/sing_words.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <iostream>
#include <vector>

using namespace vowelway;

int main(int argc, char** argv) {
    if (argc < 2) {
        std::cerr << "usage: diction_alignment FOLDER [WORDS]\n";
        return 2;
    }
    std::vector<std::filesystem::path> files;
    for (auto const& entry : std::filesystem::directory_iterator(argv[1])) {
        auto const extension = entry.path().extension();
        if (extension == ".mxl" || extension == ".musicxml" || extension == ".xml")
            files.push_back(entry.path());
    }
    std::sort(files.begin(), files.end());
    diction::Alignment all, ruled;
    for (auto const& file : files) {
        try {
            auto passage = io::read_score(file, {});
            auto const read = passage.remarks.size();
            diction::set_vowels(passage);
            auto const found = diction::alignment(passage);
            all.syllables += found.syllables;
            all.certain += found.certain;
            auto const language = diction::parse_language(passage.language);
            if (language && diction::has_diction_rules(*language)) {
                ruled.syllables += found.syllables;
                ruled.certain += found.certain;
            }
            std::cout << fmt::format("{:70} {:3} {:4} of {:4}\n", file.filename().string().substr(0, 70),
                                     passage.language, found.certain, found.syllables);
            if (argc > 2)
                for (std::size_t i = read; i < passage.remarks.size(); ++i)
                    std::cout << "    " << passage.remarks[i].text << "\n";
        } catch (InputError const& error) {
            std::cout << file.filename().string() << ": " << error.wrong() << "\n";
        }
    }
    auto const share = [](diction::Alignment const& a) {
        return 100.0 * static_cast<double>(a.certain) /
               static_cast<double>(std::max<std::size_t>(a.syllables, 1));
    };
    std::cout << fmt::format(
        "without doubt: {:.2f} % of {} syllables; in the languages with rules {:.2f} % of {}\n", share(all),
        all.syllables, share(ruled), ruled.syllables);
}
