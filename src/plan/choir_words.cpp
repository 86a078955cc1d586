// SPDX-License-Identifier: MIT
// What is said of a choir.
#include "vowelway/plan/choir_words.hpp"
#include "plan/shared_words.hpp"

#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <bit>
#include <cmath>

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

std::string told(Doing doing, std::string const& who) {
    switch (doing) {
    case Doing::above:
        return worded("{0}: too high for the spoken vowel", who);
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

/// How far a section is heard from its own spoken vowel.
Bark strayed(SungTogether const& section) { return apart(section.heard, {}); }

/// Where all do the same, one of them still goes farther.
std::string farthest(SharedWord const& word, std::vector<ChoirPart> const& parts) {
    auto const& most = *std::max_element(
        word.sections.begin(), word.sections.end(),
        [](SungTogether const& a, SungTogether const& b) { return strayed(a) < strayed(b); });
    return worded("{0} most", parts[most.part].name);
}

/// "Soprano fo, Alto 2fo on its fR1": who has a partial.
std::string owners_of(SharedPartial const& partial, SharedWord const& word, Choir const& choir) {
    std::string out;
    auto of = partial.of;
    std::stable_sort(of.begin(), of.end(), [](SharedPartial::Of const& a, SharedPartial::Of const& b) {
        return a.section < b.section;
    });
    for (auto const& one : of) {
        auto const& name = choir.parts[word.sections[one.section].part].name;
        auto const harmonic = one.harmonic == 1 ? std::string("fo") : std::to_string(one.harmonic) + "fo";
        out += (out.empty() ? "" : ", ") +
               (one.resonance > 0 ? worded("{0} {1} on its fR{2}", name, harmonic, one.resonance)
                                  : name + " " + harmonic);
    }
    return out;
}

/// The pitch of a partial, spelled as the music spells the note it belongs to.
std::string spelled(SharedPartial const& partial, SharedWord const& word, Choir const& choir) {
    auto const octaves = [](int harmonic) { return std::has_single_bit(static_cast<unsigned>(harmonic)); };
    auto const owner = std::find_if(partial.of.begin(), partial.of.end(),
                                    [&](SharedPartial::Of const& of) { return octaves(of.harmonic); });
    auto const& best = owner != partial.of.end() ? *owner : partial.of.front();
    auto const& section = word.sections[best.section];
    auto const& plan = choir.parts[section.part].plan;
    auto const& note = plan.passage.notes[plan.notes[section.note].note].spelled;
    return transposed(note, std::round(12 * std::log2(best.harmonic))).str();
}

} // namespace

std::string why_apart(SharedWord const& word, std::vector<ChoirPart> const& parts) {
    if (!word.parts_company()) return {};
    auto const first = doing_of(word.sections.front(), parts);
    if (std::all_of(word.sections.begin(), word.sections.end(),
                    [&](SungTogether const& s) { return doing_of(s, parts) == first; }))
        return told(first, worded("All")) + "; " + farthest(word, parts);
    std::string out;
    for (auto const doing : {Doing::above, Doing::turned, Doing::changed, Doing::drifts, Doing::itself}) {
        std::string who;
        for (auto const& section : word.sections)
            if (doing_of(section, parts) == doing)
                who += (who.empty() ? "" : ", ") + parts[section.part].name;
        if (!who.empty()) out += (out.empty() ? "" : "; ") + told(doing, who);
    }
    return out;
}

std::string ask_of(Choir const& choir, SharedWord const& word) {
    if (!word.parts_company()) return {};
    if (!word.has_common) return worded("No vowel that all reach at ease: let it part.");
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
            if (told(section)) who += (who.empty() ? "" : ", ") + choir.parts[section.part].name;
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

std::string named_bars_of(Choir const& choir, SharedWord const& word) {
    auto const bars = bars_of(choir, word);
    return bars.find(',') == std::string::npos ? worded("bar {0}", bars) : worded("bars {0}", bars);
}

std::string ChordWords::str() const {
    std::string out;
    for (auto const* one : {&tune, &rub, &unsettled})
        if (!one->empty()) out += (out.empty() ? "" : " ") + *one;
    return out;
}

ChordWords chord_words_of(Choir const& choir, SharedWord const& word) {
    auto const chord = std::find_if(choir.chords.begin(), choir.chords.end(),
                                    [&](Chord const& c) { return &choir.words[c.word] == &word; });
    if (chord == choir.chords.end()) return {};
    ChordWords out;
    if (!chord->together.empty()) {
        auto const& best = chord->together.front();
        out.tune = worded("Tune on {0}: {1}.", spelled(best, word, choir), owners_of(best, word, choir));
    }
    auto const rub = std::find_if(chord->rubs.begin(), chord->rubs.end(),
                                  [](SharedPartial const& partial) { return partial.on_resonance(); });
    if (rub != chord->rubs.end()) out.rub = worded("These rub: {0}.", owners_of(*rub, word, choir));
    std::string who;
    for (auto const s : chord->unsettled)
        who += (who.empty() ? "" : ", ") + choir.parts[word.sections[s].part].name;
    if (!who.empty()) out.unsettled = worded("Easily tipped: {0}.", who);
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
    if (mended == apart)
        return worded(
            "{0} syllables begin together; at {1} the vowels part, and for each there is one that all can "
            "sing.",
            choir.words.size(), apart);
    return worded(
        "{0} syllables begin together; at {1} the vowels part, and for {2} of them there is one that "
        "all can sing.",
        choir.words.size(), apart, mended);
}

} // namespace vowelway::plan
