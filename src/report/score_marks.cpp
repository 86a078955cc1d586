// SPDX-License-Identifier: MIT
#include "vowelway/report/score_marks.hpp"

#include "vowelway/report/plan_report.hpp"

namespace vowelway::report {

namespace {

std::string sign_of(plan::Advice advice) {
    switch (advice) {
    case plan::Advice::hold:
        return "–";
    case plan::Advice::migrate:
        return "~";
    case plan::Advice::modify:
        return "◆";
    }
    return "";
}

bool same_advice(plan::Decision const& a, plan::Decision const& b) {
    return a.advice == b.advice && a.brief == b.brief && a.target.shade == b.target.shade;
}

// "turn" on the first note of a turning zone, "meet" on the first of a meeting one.
std::string zone_word(plan::Decision const& now, plan::Decision const* before) {
    if (before && before->zone.zone == now.zone.zone) return "";
    if (now.zone.zone == plan::Zone::turning) return "turn";
    if (now.zone.zone == plan::Zone::meeting) return "meet";
    return "";
}

std::string sung_ipa(SungVowel const& vowel, plan::Decision const& decision) {
    std::string out;
    for (auto const& v : vowel.before) out += v.ipa();
    out += decision.advice == plan::Advice::modify ? decision.target.shade.ipa() : vowel.held.quality().ipa();
    for (auto const& v : vowel.after) out += v.ipa();
    return out;
}

std::string heading_of(plan::Plan const& plan) {
    std::string out = "Vowel plan for " + plan.singer.name + ", " + plan.technique;
    if (!plan.singer.provenance.date.empty()) out += ", measured " + plan.singer.provenance.date;
    if (plan.singer.average) out += " (" + std::string(average_voice_notice) + ")";
    if (auto const told = transposition_of(plan.passage); !told.empty()) out += ", " + told;
    return out + "\n" +
           "– hold   ~ let it drift   ◆ change the shape   turn: 2fo at fR1   meet: fo at fR1\n" +
           std::string(voice_caution);
}

} // namespace

std::optional<MarkDetail> parse_mark_detail(std::string_view name) {
    if (name == "vowels") return MarkDetail::vowels;
    if (name == "changes") return MarkDetail::changes;
    if (name == "all") return MarkDetail::all;
    return std::nullopt;
}

ScoreMarks marks_of(plan::Plan const& plan, MarkDetail detail) {
    ScoreMarks out;
    out.heading = heading_of(plan);
    plan::Decision const* before = nullptr;
    std::string last_words; // of a modification, with its bar: not said again in the same bar
    for (auto const& planned : plan.notes) {
        if (!planned.decision) continue;
        auto const& note = plan.passage.notes[planned.note];
        auto const& d = *planned.decision;
        bool const changes = before ? !same_advice(*before, d) : d.advice != plan::Advice::hold;
        bool const new_vowel = !note.melisma || (before && !(before->target.shade == d.target.shade));
        ScoreMark mark;
        mark.note = planned.note;
        if (new_vowel && (detail != MarkDetail::changes || changes || d.advice == plan::Advice::modify))
            mark.ipa = sung_ipa(*note.vowel, d);
        if (detail != MarkDetail::vowels && changes) {
            mark.sign = sign_of(d.advice);
            // Only what the singer does is put in words: room above a vocal line is scarce.
            auto words = d.advice == plan::Advice::modify ? note.measure + ": " + d.brief : "";
            if (!words.empty() && words != last_words) {
                mark.words = d.brief;
                last_words = std::move(words);
            }
        }
        if (detail == MarkDetail::all)
            if (auto const word = zone_word(d, before); !word.empty())
                mark.words += (mark.words.empty() ? "" : ", ") + word;
        if (!mark.ipa.empty() || !mark.words.empty() || !mark.sign.empty())
            out.notes.push_back(std::move(mark));
        before = &d;
    }
    return out;
}

} // namespace vowelway::report
