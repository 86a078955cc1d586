// SPDX-License-Identifier: MIT
#include "report/format.hpp"
#include "report/plan_tables.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/pencil.hpp"
#include "vowelway/report/plan_report.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace vowelway::report {

namespace {

// The headers' own texts, where the table of a language finds them.
static_assert(average_voice_notice == to_word("average voice: measure your own"));
static_assert(
    voice_caution ==
    to_word("Never push and never chase a number; comfort decides. Stop when the voice is hoarse or sore; if "
            "that lasts, see a doctor. This is not medical advice and does not replace a teacher."));

using report::number;
using report::pitch_with_uncertainty;
using report::rounded;

// Resonances are never known finer than about 10 Hz (Kewley-Port & Watson 1994: a listener's limit too).
std::string heading(plan::Plan const& plan) {
    auto const& p = plan.passage;
    std::string out = p.title.empty() ? worded("Plan of the range {0}", plan.range.str()) : p.title;
    if (!p.composer.empty()) out += " (" + p.composer + ")";
    out += "\n" + worded("singer: {0}", plan.singer.name);
    // "Average tenor as sung" says the voice already
    if (plan.singer.voice != VoiceType::other && !plan.singer.average &&
        plan.singer.name != to_string(plan.singer.voice))
        out += fmt::format(", {}", reworded(to_string(plan.singer.voice)));
    if (!plan.singer.provenance.date.empty())
        out += ", " + worded("measured {0} by {1}", plan.singer.provenance.date,
                             reworded(to_string(plan.singer.provenance.method)));
    out += "; " + worded("technique: {0}", plan.technique) +
           fmt::format("; A4 = {} Hz\n", number(in_hertz(p.tuning.a4), 2));
    if (auto const told = transposition_of(p); !told.empty())
        out += fmt::format("{} ({})\n", told, p.transposed_why);
    if (plan.singer.average) out += fmt::format("{}\n", reworded(average_voice_notice));
    return out;
}

/// Up to where a vowel may be left as it is.
std::string passive(plan::VowelPlan const& v, Tuning const& tuning, Numbers numbers) {
    if (!v.passive_range) return worded("nowhere in this range");
    auto const& range = *v.passive_range;
    if (range.reaches_top) return worded("in all of it");
    return worded("up to {0}", numbers == Numbers::shown
                                   ? pitch_with_uncertainty(tuning, range.to, range.to_sd)
                                   : tuning.name(range.to).pitch.str());
}

std::string sung(plan::VowelPlan const& v) {
    return in_seconds(v.sung) > 0 ? number(in_seconds(v.sung), 1) + " s" : "";
}

/// Vowels and notes only: what a singer reads.
std::string vowel_notes(plan::Plan const& plan) {
    using enum Table::Align;
    auto const& tuning = plan.passage.tuning;
    Table table({{worded("vowel")},
                 {worded("turns over near")},
                 {worded("leave it alone")},
                 {worded("sung"), right}});
    bool estimated = false;
    for (auto const& v : plan.vowels) {
        estimated = estimated || v.resonances.estimated;
        table.row({v.resonances.vowel.ipa() + (v.resonances.estimated ? "?" : ""),
                   tuning.name(v.turning.pitch).pitch.str(), passive(v, tuning, Numbers::left_out), sung(v)});
    }
    return table.str() + (estimated ? worded("? estimated, not measured for this singer") + "\n" : "");
}

std::string vowel_table(plan::Plan const& plan) {
    auto const& tuning = plan.passage.tuning;
    using enum Table::Align;
    Table table({{worded("vowel")},
                 {"fR1 Hz", right},
                 {"fR2 Hz", right},
                 {worded("turns at (2fo = fR1)")},
                 {worded("meets at (fo = fR1)")},
                 {worded("leave it alone")},
                 {worded("sung"), right}});
    bool assumed = false, estimated = false;
    for (auto const& v : plan.vowels) {
        auto const& r = v.resonances;
        assumed = assumed || r.r1.sd_assumed || r.r2.sd_assumed;
        estimated = estimated || r.estimated;
        table.row({r.vowel.ipa() + (r.estimated ? "?" : ""), resonance(r.r1), resonance(r.r2),
                   pitch_with_uncertainty(tuning, v.turning.pitch, v.turning.sd),
                   pitch_with_uncertainty(tuning, v.meeting.pitch, v.meeting.sd),
                   passive(v, tuning, Numbers::shown), sung(v)});
    }
    std::string out = table.str();
    if (assumed) out += worded("* deviation assumed, not measured") + "\n";
    if (estimated) out += worded("? estimated, not measured for this singer") + "\n";
    return out;
}

std::string note_row_advice(plan::Decision const& d) {
    std::string out(reworded(to_string(d.advice)));
    if (d.certainty < 0.8) out += "?";
    return out;
}

/// What is done with the vowel of a note, in short.
std::string to_do(plan::Decision const& d) {
    return d.gestures.empty() ? d.brief : plan::in_short(d.gestures);
}

std::string note_table(plan::Plan const& plan, std::vector<plan::NotePlan> const& notes) {
    using enum Table::Align;
    Table table({{worded("bar"), right},
                 {worded("beat"), right},
                 {worded("pitch")},
                 {worded("length"), right},
                 {worded("syllable")},
                 {worded("vowel")},
                 {worded("zone")},
                 {worded("heard")},
                 {worded("advice")},
                 {worded("sing")},
                 {worded("what to do")}});
    for (auto const& n : notes) {
        auto const& note = plan.passage.notes[n.note];
        std::vector<std::string> cells{note.measure, number(note.beat, 2), note.spelled.str(),
                                       number(in_seconds(note.length), 1) + " s",
                                       note.melisma ? "~" : note.text()};
        if (n.decision) {
            auto const& d = *n.decision;
            for (std::string cell :
                 {note.vowel->held.ipa(), std::string(reworded(to_string(d.zone.zone))), d.heard.vowel.ipa(),
                  note_row_advice(d), d.advice == plan::Advice::modify ? d.target.shade.ipa() : std::string(),
                  to_do(d)})
                cells.push_back(std::move(cell));
        } else {
            cells.push_back(note.hummed ? worded("hum") : "?");
        }
        table.row(std::move(cells));
    }
    return table.str();
}

std::string watch_list(plan::Plan const& plan, Numbers numbers) {
    auto const pencil = plan::pencil_of(plan);
    std::string out = plan::summary_of(plan, pencil) + "\n";
    if (!pencil.watch.empty())
        out += "\n" + worded("Notes to watch, the longest and most exposed first") + "\n";
    for (auto const& w : pencil.watch) {
        auto const& note = plan.passage.notes[w.note];
        auto const& d = *plan.notes[w.note].decision;
        out += "  " + worded("bar {0}, beat {1}", note.measure, number(note.beat, 2)) +
               fmt::format(", {} \"{}\": {} → {} · {}{}", note.spelled.str(), note.text(),
                           note.vowel->held.quality().ipa(), d.target.shade.ipa(), w.words,
                           d.certainty < 0.75 ? " ?" : "");
        if (!w.also.empty()) out += "; " + worded("again in {0}", plan::bars_of(plan.passage, w.also));
        if (numbers == Numbers::shown) out += "; " + d.why;
        out += "\n";
    }
    for (auto const& caution : pencil.cautions) out += caution + "\n";
    return out;
}

// Without notes: what each vowel does through the range, a line where something changes.
std::string strip_table(plan::Plan const& plan) {
    Table table({{worded("vowel")},
                 {worded("from")},
                 {worded("up to")},
                 {worded("zone")},
                 {worded("heard")},
                 {worded("advice")},
                 {worded("sing")},
                 {worded("what to do")}});
    auto const& tuning = plan.passage.tuning;
    for (auto const& v : plan.vowels) {
        for (std::size_t i = 0; i < v.strip.size();) {
            auto const& d = v.strip[i].decision;
            std::size_t end = i + 1;
            auto const same = [&](plan::Decision const& o) {
                return o.zone.zone == d.zone.zone && o.heard.vowel == d.heard.vowel && o.advice == d.advice &&
                       o.target.shade == d.target.shade;
            };
            auto brief = d.brief;
            while (end < v.strip.size() && same(v.strip[end].decision)) {
                if (v.strip[end].decision.turns_here) brief = v.strip[end].decision.brief;
                ++end;
            }
            table.row({i == 0 ? v.resonances.vowel.ipa() : "", tuning.name(v.strip[i].pitch).pitch.str(),
                       tuning.name(v.strip[end - 1].pitch).pitch.str(),
                       std::string(reworded(to_string(d.zone.zone))), d.heard.vowel.ipa(), note_row_advice(d),
                       d.advice == plan::Advice::modify ? d.target.shade.ipa() : "", brief});
            i = end;
        }
    }
    return table.str();
}

} // namespace

std::string plan_key() {
    return worded("leave it alone: on a slow scale; in a song the length of a note and its neighbours count "
                  "too.") +
           "\n" +
           worded("zone: open, the second harmonic lies below the vowel's first resonance; turning, about at "
                  "it; "
                  "close, above it; meeting, the note itself is about at it; above, over it.") +
           "\n" +
           worded("advice: hold, nothing needed; migrate, keep the shape and let the vowel drift; modify, "
                  "change "
                  "the shape; ?, not certain.") +
           "\n";
}

std::string plan_tables(plan::Plan const& plan, Numbers numbers) {
    std::string out = heading(plan) + "\n";
    if (!plan.notes.empty()) out += watch_list(plan, numbers) + "\n";
    out += numbers == Numbers::shown ? vowel_table(plan) : vowel_notes(plan);
    return out + "\n" + (plan.notes.empty() ? strip_table(plan) : note_table(plan, plan.notes));
}

std::string plan_text(plan::Plan const& plan, Numbers numbers) {
    return plan_tables(plan, numbers) + "\n" + plan_key() + fmt::format("\n{}\n", reworded(voice_caution));
}

} // namespace vowelway::report
