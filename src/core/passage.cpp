// SPDX-License-Identifier: MIT
#include "vowelway/core/passage.hpp"

#include "core/interval_words.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway {

std::string_view to_string(VowelOrigin origin) {
    switch (origin) {
    case VowelOrigin::typed:
        return "typed";
    case VowelOrigin::override_:
        return "override";
    case VowelOrigin::rule:
        return "rule";
    case VowelOrigin::synthesiser:
        return "synthesiser";
    case VowelOrigin::guessed:
        return "guessed";
    }
    return "";
}

std::string SungNote::text() const {
    std::string out;
    for (auto const& syllable : syllables) {
        if (!out.empty()) out += "‿";
        out += syllable.text;
    }
    if (syllables.empty()) return out;
    auto const first = syllables.front().part, last = syllables.back().part;
    if (first == Syllable::Part::middle || first == Syllable::Part::end) out = "-" + out;
    if (last == Syllable::Part::begin || last == Syllable::Part::middle) out += "-";
    return out;
}

std::string transposition_of(Passage const& passage) {
    if (passage.transposed == 0) return "";
    return worded("sung {0} than written", interval_in_words(passage.transposed));
}

std::pair<Pitch, Pitch> compass(Passage const& passage) {
    if (passage.notes.empty())
        throw InputError(worded("the passage has no notes"),
                         worded("give a passage with at least one sung note"));
    auto const by_pitch = [](SungNote const& a, SungNote const& b) { return a.pitch < b.pitch; };
    auto const [low, high] = std::minmax_element(passage.notes.begin(), passage.notes.end(), by_pitch);
    return {low->pitch, high->pitch};
}

} // namespace vowelway
