// SPDX-License-Identifier: MIT
// What is said of a choir.
#include "vowelway/plan/choir_words.hpp"
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

std::string section_name(SungTogether const& section, std::vector<ChoirPart> const& parts) {
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
            if (doing_of(section, parts) == doing)
                who += (who.empty() ? "" : ", ") + section_name(section, parts);
        if (!who.empty()) out += (out.empty() ? "" : "; ") + told(doing, who);
    }
    return out;
}

std::string ask_of(Choir const& choir, SharedWord const& word) {
    if (!word.parts_company()) return {};
    if (!word.has_common) return worded("No vowel that all reach: let it part.");
    std::string out;
    auto const& all = word.sections;
    auto const same = [](SungTogether const& a, SungTogether const& b) {
        return a.ask == b.ask && a.shade == b.shade;
    };
    for (auto first = all.begin(); first != all.end(); ++first) {
        auto const told = [&](SungTogether const& s) { return same(s, *first); };
        if (first->ask.empty() || std::any_of(all.begin(), first, told)) continue;
        std::string who;
        for (auto const& section : all)
            if (told(section)) who += (who.empty() ? "" : ", ") + section_name(section, choir.parts);
        if (std::all_of(all.begin(), all.end(), told)) who = worded("All");
        out += (out.empty() ? "" : "; ") + who + ": " + first->ask + " /" + first->shade.ipa() + "/";
    }
    return out;
}

std::string bars_of(Choir const& choir, SharedWord const& word) {
    std::vector<SharedWord const*> all{&word};
    for (auto const again : word.also) all.push_back(&choir.words[again]);
    std::stable_sort(all.begin(), all.end(),
                     [](SharedWord const* a, SharedWord const* b) { return a->start < b->start; });
    std::vector<std::string> bars;
    for (auto const* one : all)
        if (std::find(bars.begin(), bars.end(), one->measure) == bars.end()) bars.push_back(one->measure);
    std::string out;
    for (auto const& bar : bars) out += (out.empty() ? "" : ", ") + bar;
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
