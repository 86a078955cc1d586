// SPDX-License-Identifier: MIT
#include "report/csv.hpp"
#include "report/format.hpp"
#include "vowelway/report/plan_report.hpp"

#include <string>
#include <vector>

namespace vowelway::report {

namespace {

std::string gestures(plan::Decision const& d) {
    std::string out;
    for (auto const& g : d.gestures) out += (out.empty() ? "" : "; ") + g.words;
    return out;
}

using Row = std::vector<std::string>;

void add(Row& row, Row const& more) { row.insert(row.end(), more.begin(), more.end()); }

/// The columns both tables end with.
Row decision_names() {
    return {"zone",          "p_turned",      "heard",   "advice",  "certainty", "target_ipa",
            "target_fR1_hz", "target_fR2_hz", "gain_db", "gesture", "why"};
}

Row cells(plan::Decision const& d) {
    return {std::string(to_string(d.zone.zone)),
            number(d.zone.p_turned, 3),
            d.heard.vowel.ipa(),
            std::string(to_string(d.advice)),
            number(d.certainty, 2),
            d.target.shade.ipa(),
            number(in_hertz(d.target.r1.centre), 1),
            number(in_hertz(d.target.r2.centre), 1),
            number(d.gain.value, 1),
            gestures(d),
            d.why};
}

Row cells(SungNote const& note) {
    return {note.measure,
            number(note.beat, 3),
            note.spelled.str(),
            number(in_hertz(note.pitch.frequency()), 2),
            number(in_seconds(note.start), 3),
            number(in_seconds(note.length), 3),
            note.text()};
}

/// A row for each vowel and pitch.
std::string csv_of_range(plan::Plan const& plan) {
    std::string out;
    Row head{"vowel", "pitch", "fo_hz", "fR1_hz", "fR2_hz"};
    add(head, decision_names());
    csv_line(out, head);
    for (auto const& v : plan.vowels)
        for (auto const& cell : v.strip) {
            Row row{v.resonances.vowel.ipa(), plan.passage.tuning.name(cell.pitch).pitch.str(),
                    number(in_hertz(cell.pitch.frequency()), 2), number(in_hertz(v.resonances.r1.centre), 1),
                    number(in_hertz(v.resonances.r2.centre), 1)};
            add(row, cells(cell.decision));
            csv_line(out, row);
        }
    return out;
}

/// A row for each note; what was not decided stays empty.
std::string csv_of_notes(plan::Plan const& plan) {
    std::string out;
    Row head{"measure", "beat", "pitch", "fo_hz", "start_s", "duration_s", "syllable", "vowel", "vowel_from"};
    add(head, decision_names());
    csv_line(out, head);
    for (auto const& n : plan.notes) {
        auto const& note = plan.passage.notes[n.note];
        auto row = cells(note);
        if (n.decision) {
            add(row, {note.vowel->held.ipa(), std::string(to_string(note.vowel->origin))});
            add(row, cells(*n.decision));
        }
        row.resize(head.size());
        csv_line(out, row);
    }
    return out;
}

} // namespace

std::string plan_csv(plan::Plan const& plan) {
    return plan.notes.empty() ? csv_of_range(plan) : csv_of_notes(plan);
}

} // namespace vowelway::report
