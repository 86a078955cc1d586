// SPDX-License-Identifier: MIT
#include "vowelway/report/score_marks.hpp"

#include "vowelway/core/wording.hpp"
#include "vowelway/plan/pencil.hpp"
#include "vowelway/report/plan_report.hpp"

#include <algorithm>
#include <utility>

namespace vowelway::report {

namespace {

bool same_advice(plan::Decision const& a, plan::Decision const& b) {
    return a.advice == b.advice && a.brief == b.brief && a.target.shade == b.target.shade;
}

/// What is sung on a note when this vowel is held on it.
std::string sung_ipa(SungVowel const& vowel, Vowel const& held) {
    std::string out;
    for (auto const& v : vowel.before) out += v.ipa();
    out += held.ipa();
    for (auto const& v : vowel.after) out += v.ipa();
    return out;
}

/// Short lines, so that they fit into a corner of the page: whose marks, what they say, and the caution.
std::string heading_of(plan::Plan const& plan, MarkDetail detail, bool common) {
    std::string out = plan.singer.name + ", " + plan.technique;
    if (!plan.singer.provenance.date.empty())
        out += "\n" + worded("measured {0}", plan.singer.provenance.date);
    if (plan.singer.average) out += "\n" + std::string(reworded(average_voice_notice));
    if (auto const told = transposition_of(plan.passage); !told.empty()) out += "\n" + told;
    out += "\n" + (detail == MarkDetail::vowels
                       ? worded("Under the words: the vowel to sing.")
                       : worded("Under the words: the vowel to sing;\nover the notes: what to do."));
    if (common) out += "\n" + worded("One vowel for all where the sections part.");
    return out + "\n" +
           worded("Comfort decides: never push. Hoarse or sore: stop;\nif it lasts, see a doctor. Not "
                  "medical advice.");
}

/// What is said over a note when its advice is another than before; nothing for what is sung as it stands.
std::string words_of(plan::Decision const& d) {
    if (d.advice == plan::Advice::modify) return plan::in_short(d.gestures);
    return d.advice == plan::Advice::migrate ? d.brief : "";
}

void add_words(ScoreMark& mark, std::string const& words) {
    if (!words.empty()) mark.words += (mark.words.empty() ? "" : ", ") + words;
}

std::string turns_over() { return worded("turns over"); }

ScoreMarks pencilled(plan::Plan const& plan) {
    ScoreMarks out;
    for (auto const& pencil : plan::pencil_of(plan).marks) {
        if (out.notes.empty() || out.notes.back().note != pencil.note)
            out.notes.push_back({pencil.note, {}, {}});
        auto& mark = out.notes.back();
        if (pencil.vowel) mark.ipa = sung_ipa(*plan.passage.notes[pencil.note].vowel, *pencil.vowel);
        if (pencil.turns) add_words(mark, turns_over());
        add_words(mark, pencil.words.empty() || pencil.sure ? pencil.words : pencil.words + "?");
    }
    return out;
}

ScoreMarks of_every_note(plan::Plan const& plan, bool words) {
    ScoreMarks out;
    plan::Decision const* before = nullptr;
    for (auto const& planned : plan.notes) {
        if (!planned.decision) continue;
        auto const& note = plan.passage.notes[planned.note];
        auto const& d = *planned.decision;
        ScoreMark mark{planned.note, {}, {}};
        if (!note.melisma || (before && !(before->target.shade == d.target.shade)))
            mark.ipa = sung_ipa(*note.vowel, d.advice == plan::Advice::modify ? d.target.shade
                                                                              : note.vowel->held.quality());
        if (words && plan::turns_here(plan, planned.note))
            add_words(mark, turns_over());
        else if (words && (!before || !same_advice(*before, d)))
            add_words(mark, words_of(d));
        if (!mark.ipa.empty() || !mark.words.empty()) out.notes.push_back(std::move(mark));
        before = &d;
    }
    return out;
}

/// The mark of a note; a new one in its place where it has none.
ScoreMark& mark_at(ScoreMarks& marks, std::size_t note) {
    auto& list = marks.notes;
    auto const at = std::lower_bound(list.begin(), list.end(), note,
                                     [](ScoreMark const& m, std::size_t n) { return m.note < n; });
    if (at != list.end() && at->note == note) return *at;
    return *list.insert(at, ScoreMark{note, {}, {}});
}

/// The letter is what a singer pencils; how the mouth gets there only where all is written.
ScoreMark asked_mark(plan::Plan const& plan, plan::SungTogether const& section, MarkDetail detail) {
    auto const note = plan.notes[section.note].note;
    return {note, sung_ipa(*plan.passage.notes[note].vowel, section.shade),
            detail == MarkDetail::all ? section.ask + " /" + section.shade.ipa() + "/" : ""};
}

} // namespace

std::optional<MarkDetail> parse_mark_detail(std::string_view name) {
    if (name == "vowels") return MarkDetail::vowels;
    if (name == "changes") return MarkDetail::changes;
    if (name == "all") return MarkDetail::all;
    return std::nullopt;
}

ScoreMarks marks_of(plan::Plan const& plan, MarkDetail detail) {
    auto out =
        detail == MarkDetail::changes ? pencilled(plan) : of_every_note(plan, detail == MarkDetail::all);
    out.heading = heading_of(plan, detail, false);
    return out;
}

ScoreMarks marks_of(plan::Choir const& choir, std::size_t part, MarkDetail detail) {
    auto const& plan = choir.parts[part].plan;
    auto out = marks_of(plan, detail);
    if (detail == MarkDetail::vowels) return out;
    bool asked = false;
    for (auto const& word : choir.words) {
        if (!word.parts_company() || !word.has_common) continue;
        for (auto const& section : word.sections) {
            if (section.part != part || section.ask.empty()) continue;
            mark_at(out, plan.notes[section.note].note) = asked_mark(plan, section, detail);
            asked = true;
        }
    }
    out.heading = heading_of(plan, detail, asked);
    return out;
}

} // namespace vowelway::report
