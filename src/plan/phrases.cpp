// SPDX-License-Identifier: MIT
#include "vowelway/plan/phrases.hpp"
#include "vowelway/core/wording.hpp"

namespace vowelway::plan {

std::vector<PhraseNotes> phrases_of(Passage const& passage) {
    constexpr auto breath = seconds(0.25);
    std::vector<PhraseNotes> out;
    auto const& notes = passage.notes;
    for (std::size_t i = 0; i < notes.size(); ++i) {
        bool const begins =
            i == 0 || notes[i].start - (notes[i - 1].start + notes[i - 1].length) >= breath - seconds(1e-6);
        if (begins) out.push_back({i, i, i});
        auto& phrase = out.back();
        phrase.to = i + 1;
        auto const& peak = notes[phrase.peak];
        if (peak.pitch < notes[i].pitch || (!(notes[i].pitch < peak.pitch) && peak.length < notes[i].length))
            phrase.peak = i;
    }
    return out;
}

std::string words_of(Passage const& passage, PhraseNotes const& phrase) {
    std::string out;
    bool word_open = false;
    for (std::size_t i = phrase.from; i < phrase.to; ++i)
        for (auto const& s : passage.notes[i].syllables) {
            bool const goes_on = s.part == Syllable::Part::middle || s.part == Syllable::Part::end;
            if (!out.empty() && !(word_open && goes_on)) out += " ";
            out += s.text;
            word_open = s.part == Syllable::Part::begin || s.part == Syllable::Part::middle;
        }
    return out;
}

std::string bars_of(Passage const& passage, PhraseNotes const& phrase) {
    auto const &first = passage.notes[phrase.from].measure, &last = passage.notes[phrase.to - 1].measure;
    return first == last ? worded("bar {0}", first) : worded("bars {0} to {1}", first, last);
}

} // namespace vowelway::plan
