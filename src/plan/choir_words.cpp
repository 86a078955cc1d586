// SPDX-License-Identifier: MIT
// What is said of a choir.
#include "plan/shared_words.hpp"

#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway::plan {

namespace {

/// What a section does that the others do not.
enum class Doing { above, turned, changed, drifts, itself };

Doing doing_of(SungTogether const& section, std::vector<ChoirPart> const& parts) {
    auto const& d = *parts[section.part].plan.notes[section.note].decision;
    if (d.advice == Advice::modify) return Doing::changed;
    if (d.zone.zone == Zone::above || d.zone.zone == Zone::meeting) return Doing::above;
    if (d.turned) return Doing::turned;
    return apart(section.heard, {}) > heard_as_one ? Doing::drifts : Doing::itself;
}

std::string name_of(SungTogether const& section, std::vector<ChoirPart> const& parts) {
    return parts[section.part].name;
}

std::string told(Doing doing, std::string const& who) {
    switch (doing) {
    case Doing::above:
        return worded("{0}: fo has reached fR1", who);
    case Doing::turned:
        return worded("{0}: turned over", who);
    case Doing::changed:
        return worded("{0}: changes the vowel", who);
    case Doing::drifts:
        return worded("{0}: drifts", who);
    case Doing::itself:
        break;
    }
    return worded("{0}: as spoken", who);
}

} // namespace

std::string why_apart(SharedWord const& word, std::vector<ChoirPart> const& parts) {
    if (!word.parts_company()) return {};
    std::string out;
    for (auto const doing : {Doing::above, Doing::turned, Doing::changed, Doing::drifts, Doing::itself}) {
        std::string who;
        for (auto const& section : word.sections)
            if (doing_of(section, parts) == doing) who += (who.empty() ? "" : ", ") + name_of(section, parts);
        if (!who.empty()) out += (out.empty() ? "" : "; ") + told(doing, who);
    }
    return out;
}

std::string summary_of(Choir const& choir) {
    if (choir.words.empty()) return worded("No two parts begin a word together on the same vowel.");
    std::size_t apart = 0, mended = 0;
    for (auto const& word : choir.words) {
        apart += word.parts_company() ? 1 : 0;
        mended += word.parts_company() && word.has_common ? 1 : 0;
    }
    if (apart == 0)
        return worded("{0} syllables begin together; everywhere the vowels match.", choir.words.size());
    return worded(
        "{0} syllables begin together; at {1} the vowels part, and for {2} of them there is one that "
        "all can sing.",
        choir.words.size(), apart, mended);
}

} // namespace vowelway::plan
