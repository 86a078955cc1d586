// SPDX-License-Identifier: MIT
#include "report/csv.hpp"
#include "report/format.hpp"
#include "vowelway/report/plan_report.hpp"

#include <string>

namespace vowelway::report {

namespace {

using report::csv_line;
using report::number;

std::string gestures(plan::Decision const& d) {
    std::string out;
    for (auto const& g : d.gestures) out += (out.empty() ? "" : "; ") + g.words;
    return out;
}

} // namespace

std::string plan_csv(plan::Plan const& plan) {
    auto const& tuning = plan.passage.tuning;
    std::string out;
    if (plan.notes.empty()) {
        csv_line(out,
                 {"vowel", "pitch", "fo_hz", "fR1_hz", "fR2_hz", "zone", "p_turned", "heard", "advice",
                  "certainty", "target_ipa", "target_fR1_hz", "target_fR2_hz", "gain_db", "gesture", "why"});
        for (auto const& v : plan.vowels)
            for (auto const& cell : v.strip) {
                auto const& d = cell.decision;
                csv_line(
                    out,
                    {v.resonances.vowel.ipa(), tuning.name(cell.pitch).pitch.str(),
                     number(in_hertz(cell.pitch.frequency()), 2), number(in_hertz(v.resonances.r1.centre), 1),
                     number(in_hertz(v.resonances.r2.centre), 1), std::string(to_string(d.zone.zone)),
                     number(d.zone.p_turned, 3), d.heard.vowel.ipa(), std::string(to_string(d.advice)),
                     number(d.certainty, 2), d.target.shade.ipa(), number(in_hertz(d.target.r1.centre), 1),
                     number(in_hertz(d.target.r2.centre), 1), number(d.gain.value, 1), gestures(d), d.why});
            }
        return out;
    }
    csv_line(out, {"measure",       "beat",          "pitch",   "fo_hz",      "start_s",
                   "duration_s",    "syllable",      "vowel",   "vowel_from", "zone",
                   "p_turned",      "heard",         "advice",  "certainty",  "target_ipa",
                   "target_fR1_hz", "target_fR2_hz", "gain_db", "gesture",    "why"});
    for (auto const& n : plan.notes) {
        auto const& note = plan.passage.notes[n.note];
        std::string const head[] = {note.measure,
                                    number(note.beat, 3),
                                    note.spelled.str(),
                                    number(in_hertz(note.pitch.frequency()), 2),
                                    number(in_seconds(note.start), 3),
                                    number(in_seconds(note.length), 3),
                                    note.text()};
        if (!n.decision) {
            csv_line(out, {head[0], head[1], head[2], head[3], head[4], head[5], head[6], "", "", "",
                           "",      "",      "",      "",      "",      "",      "",      "", "", ""});
            continue;
        }
        auto const& d = *n.decision;
        csv_line(out, {head[0],
                       head[1],
                       head[2],
                       head[3],
                       head[4],
                       head[5],
                       head[6],
                       note.vowel->held.ipa(),
                       std::string(to_string(note.vowel->origin)),
                       std::string(to_string(d.zone.zone)),
                       number(d.zone.p_turned, 3),
                       d.heard.vowel.ipa(),
                       std::string(to_string(d.advice)),
                       number(d.certainty, 2),
                       d.target.shade.ipa(),
                       number(in_hertz(d.target.r1.centre), 1),
                       number(in_hertz(d.target.r2.centre), 1),
                       number(d.gain.value, 1),
                       gestures(d),
                       d.why});
    }
    return out;
}

} // namespace vowelway::report
