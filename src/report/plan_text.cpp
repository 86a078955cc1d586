// SPDX-License-Identifier: MIT
#include "report/format.hpp"
#include "vowelway/report/plan_report.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace vowelway::report {

namespace {

using report::number;
using report::pitch_with_uncertainty;
using report::rounded;

// Resonances are never known finer than about 10 Hz (Kewley-Port & Watson 1994: a listener's limit too).
std::string resonance(Resonance const& r) {
    return fmt::format("{} ±{}{}", number(rounded(in_hertz(r.centre), 10)),
                       number(rounded(in_hertz(r.sd), 5)), r.sd_assumed ? "*" : "");
}

std::string heading(plan::Plan const& plan) {
    auto const& p = plan.passage;
    std::string out = p.title.empty() ? "Plan of the range " + plan.range.str() : p.title;
    if (!p.composer.empty()) out += " (" + p.composer + ")";
    out += fmt::format("\nsinger: {}", plan.singer.name);
    if (plan.singer.voice != VoiceType::other && plan.singer.name != to_string(plan.singer.voice))
        out += fmt::format(", {}", to_string(plan.singer.voice));
    if (!plan.singer.provenance.date.empty())
        out += fmt::format(", measured {} by {}", plan.singer.provenance.date,
                           to_string(plan.singer.provenance.method));
    out += fmt::format("; technique: {}; A4 = {} Hz\n", plan.technique, number(in_hertz(p.tuning.a4), 2));
    if (auto const told = transposition_of(p); !told.empty())
        out += fmt::format("{} ({})\n", told, p.transposed_why);
    if (plan.singer.average) out += fmt::format("{}\n", average_voice_notice);
    return out;
}

std::string vowel_table(plan::Plan const& plan) {
    auto const& tuning = plan.passage.tuning;
    using enum Table::Align;
    Table table({{"vowel"},
                 {"fR1 Hz", right},
                 {"fR2 Hz", right},
                 {"turns at (2fo = fR1)"},
                 {"meets at (fo = fR1)"},
                 {"leave it alone"},
                 {"sung", right}});
    bool assumed = false, estimated = false;
    for (auto const& v : plan.vowels) {
        auto const& r = v.resonances;
        assumed = assumed || r.r1.sd_assumed || r.r2.sd_assumed;
        estimated = estimated || r.estimated;
        std::string passive = "nowhere in this range";
        if (v.passive_range)
            passive =
                v.passive_range->reaches_top
                    ? "in all of it"
                    : "up to " + pitch_with_uncertainty(tuning, v.passive_range->to, v.passive_range->to_sd);
        table.row({r.vowel.ipa() + (r.estimated ? "?" : ""), resonance(r.r1), resonance(r.r2),
                   pitch_with_uncertainty(tuning, v.turning.pitch, v.turning.sd),
                   pitch_with_uncertainty(tuning, v.meeting.pitch, v.meeting.sd), passive,
                   in_seconds(v.sung) > 0 ? number(in_seconds(v.sung), 1) + " s" : ""});
    }
    std::string out = table.str();
    if (assumed) out += "* deviation assumed, not measured\n";
    if (estimated) out += "? estimated, not measured for this singer\n";
    return out;
}

std::string note_row_advice(plan::Decision const& d) {
    std::string out(to_string(d.advice));
    if (d.certainty < 0.8) out += "?";
    return out;
}

std::string note_table(plan::Plan const& plan, std::vector<plan::NotePlan> const& notes) {
    using enum Table::Align;
    Table table({{"bar", right},
                 {"beat", right},
                 {"pitch"},
                 {"length", right},
                 {"syllable"},
                 {"vowel"},
                 {"zone"},
                 {"heard"},
                 {"advice"},
                 {"aim"},
                 {"what to do"}});
    for (auto const& n : notes) {
        auto const& note = plan.passage.notes[n.note];
        std::vector<std::string> cells{note.measure, number(note.beat, 2), note.spelled.str(),
                                       number(in_seconds(note.length), 1) + " s",
                                       note.melisma ? "~" : note.text()};
        if (n.decision) {
            auto const& d = *n.decision;
            for (std::string cell :
                 {note.vowel->held.ipa(), std::string(to_string(d.zone.zone)), d.heard.vowel.ipa(),
                  note_row_advice(d), d.advice == plan::Advice::modify ? d.target.shade.ipa() : std::string(),
                  d.brief})
                cells.push_back(std::move(cell));
        } else {
            cells.push_back(note.hummed ? "hum" : "?");
        }
        table.row(std::move(cells));
    }
    return table.str();
}

std::string notes_to_watch(plan::Plan const& plan) {
    std::vector<plan::NotePlan> watch;
    for (auto const& n : plan.notes)
        if (n.decision && n.importance > 0) watch.push_back(n);
    std::stable_sort(watch.begin(), watch.end(),
                     [](auto const& a, auto const& b) { return a.importance > b.importance; });
    if (watch.size() > 8) watch.resize(8);
    std::stable_sort(watch.begin(), watch.end(),
                     [](auto const& a, auto const& b) { return a.note < b.note; });
    std::string out;
    for (auto const& n : watch) {
        auto const& note = plan.passage.notes[n.note];
        out += fmt::format("  bar {}, beat {}, {} \"{}\": {}", note.measure, number(note.beat, 2),
                           note.spelled.str(), note.text(), n.decision->why);
        if (!n.decision->gestures.empty()) {
            out += "; ";
            for (std::size_t i = 0; i < n.decision->gestures.size(); ++i)
                out += (i ? ", " : "") + n.decision->gestures[i].words;
        }
        out += "\n";
    }
    return out;
}

// Without notes: what each vowel does through the range, a line where something changes.
std::string strip_table(plan::Plan const& plan) {
    Table table({{"vowel"}, {"from"}, {"to"}, {"zone"}, {"heard"}, {"advice"}, {"aim"}, {"what to do"}});
    auto const& tuning = plan.passage.tuning;
    for (auto const& v : plan.vowels) {
        for (std::size_t i = 0; i < v.strip.size();) {
            auto const& d = v.strip[i].decision;
            std::size_t end = i + 1;
            auto const same = [&](plan::Decision const& o) {
                return o.zone.zone == d.zone.zone && o.heard.vowel == d.heard.vowel && o.advice == d.advice &&
                       o.target.shade == d.target.shade;
            };
            while (end < v.strip.size() && same(v.strip[end].decision)) ++end;
            table.row({i == 0 ? v.resonances.vowel.ipa() : "", tuning.name(v.strip[i].pitch).pitch.str(),
                       tuning.name(v.strip[end - 1].pitch).pitch.str(), std::string(to_string(d.zone.zone)),
                       d.heard.vowel.ipa(), note_row_advice(d),
                       d.advice == plan::Advice::modify ? d.target.shade.ipa() : "", d.brief});
            i = end;
        }
    }
    return table.str();
}

} // namespace

std::string plan_text(plan::Plan const& plan) {
    std::string out = heading(plan) + "\n" + vowel_table(plan);
    if (!plan.notes.empty()) {
        auto const watch = notes_to_watch(plan);
        if (!watch.empty()) out += "\nNotes to watch\n" + watch;
        out += "\n" + note_table(plan, plan.notes);
    } else {
        out += "\n" + strip_table(plan);
    }
    out += fmt::format("\n{}\n", voice_caution);
    return out;
}

} // namespace vowelway::report
