// SPDX-License-Identifier: MIT
#include "plan/tasks.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::plan {

double line_between(SungNote const& before, SungNote const& note) {
    double const apart = in_seconds(note.start - before.start);
    double const rest = apart - in_seconds(before.length);
    double line = apart > 0 ? std::clamp(std::sqrt(0.5 / apart), 0.5, 2.0) : 2.0;
    if (rest >= 0.25) return 0.2 * line;
    bool const same_vowel =
        before.vowel && note.vowel && before.vowel->held.quality() == note.vowel->held.quality();
    double const leap = std::abs(in_semitones(note.pitch - before.pitch));
    bool const repeated =
        same_vowel && leap < 0.5 && !note.syllables.empty() && note.syllables == before.syllables;
    if (repeated) return 4 * line;
    if (!note.melisma) line *= same_vowel ? 0.6 : 0.2;
    if (leap > 5.5) line *= 0.6;
    return line;
}

double attention_between(SungNote const& before, SungNote const& note) {
    if (in_seconds(note.start - before.start) - in_seconds(before.length) >= 0.25) return 1;
    bool const same_vowel =
        before.vowel && note.vowel && before.vowel->held.quality() == note.vowel->held.quality();
    return same_vowel ? 0 : 0.25;
}

} // namespace vowelway::plan
