// SPDX-License-Identifier: MIT
#include "page/words_sung.hpp"

#include "diction/words/letters.hpp"

#include <algorithm>

namespace vowelway::page {

std::vector<WordSung> words_sung(Passage const& passage) {
    std::vector<WordSung> out;
    bool open = false;
    for (std::size_t i = 0; i < passage.notes.size(); ++i)
        for (auto const& syllable : passage.notes[i].syllables) {
            using Part = Syllable::Part;
            if (!open || syllable.part == Part::begin) out.emplace_back();
            out.back().text += diction::lower(diction::without_punctuation(syllable.text));
            out.back().notes.push_back(i);
            open = syllable.part == Part::begin || syllable.part == Part::middle;
        }
    out.erase(std::remove_if(out.begin(), out.end(), [](auto const& word) { return word.text.empty(); }),
              out.end());
    return out;
}

} // namespace vowelway::page
