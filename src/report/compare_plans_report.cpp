// SPDX-License-Identifier: MIT
#include "vowelway/report/compare_plans_report.hpp"
#include "report/csv.hpp"
#include "report/json_parts.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>

namespace vowelway::report {

namespace {

using report::csv_line;
using report::Json;
using report::number;
using report::rounded;

std::string does(plan::Decision const& d) {
    auto out = std::string(reworded(to_string(d.advice)));
    if (d.advice == plan::Advice::modify) out += " " + d.target.shade.ipa();
    return out;
}

std::string share(Duration part, Duration whole) {
    return fmt::format("{:.0f} %", 100 * in_seconds(part) / std::max(1e-9, in_seconds(whole)));
}

Vowel const& vowel_of(plan::Plan const& plan, std::size_t note) {
    return plan.vowels[*plan.notes[note].vowel].resonances.vowel;
}

std::string times_table(plan::PlansCompared const& c) {
    using A = Table::Align;
    Table table({{worded("of the time sung")},
                 {worded("hold"), A::right},
                 {worded("migrate"), A::right},
                 {worded("modify"), A::right}});
    for (std::size_t s = 0; s < 2; ++s) {
        auto const& t = c.times[s];
        table.row({c.plans[s].singer.name, share(t.of[0], t.all()), share(t.of[1], t.all()),
                   share(t.of[2], t.all())});
    }
    return table.str();
}

} // namespace

std::string plans_compared_text(plan::PlansCompared const& c) {
    auto const& [a, b] = c.plans;
    std::string out = worded("{0}: {1} and {2}, technique {3}",
                             a.passage.title.empty() ? worded("Two plans") : a.passage.title, a.singer.name,
                             b.singer.name, a.technique) +
                      "\n\n";
    using A = Table::Align;
    Table table({{worded("bar")},
                 {worded("beat"), A::right},
                 {worded("syllable")},
                 {worded("pitch")},
                 {worded("vowel")},
                 {a.singer.name},
                 {b.singer.name},
                 {worded("certain"), A::right}});
    std::size_t open = 0;
    for (auto const& n : c.notes) {
        if (n.parting == plan::Parting::none) continue;
        if (n.certainty < plan::listed_parting) {
            ++open;
            continue;
        }
        auto const& note = a.passage.notes[n.note];
        auto const &da = *a.notes[n.note].decision, &db = *b.notes[n.note].decision;
        auto const cell = [&](plan::Decision const& d, Cents way) {
            return fmt::format("{}, {}{}", reworded(to_string(d.zone.zone)), does(d),
                               d.advice == plan::Advice::modify ? fmt::format(" {:+.0f}", in_semitones(way))
                                                                : "");
        };
        table.row(
            {note.measure, number(note.beat, 3), note.text(), note.spelled.str(), vowel_of(a, n.note).ipa(),
             cell(da, n.way[0][0]), cell(db, n.way[1][0]),
             fmt::format("{:.0f} %{}", 100 * n.certainty, n.certainty >= plan::sure_parting ? "" : "?")});
    }
    auto const all = c.times[0].all();
    if (table.empty() && open == 0)
        out += worded("The two plans do not differ.") + "\n";
    else
        out += (table.empty() ? "" : table.str() + "\n") +
               (open > 0 ? worded("Left out here, being less certain than {0} %: {1} (the JSON has all).",
                                  fmt::format("{:.0f}", 100 * plan::listed_parting), open) +
                               "\n"
                         : "") +
               worded("They differ for {0} of the time sung, certainly (at least {1} %) for {2}.\n+5: fR1 "
                      "five semitones above the singer's own vowel. ?: uncertain.",
                      share(c.parting, all), fmt::format("{:.0f}", 100 * plan::sure_parting),
                      share(c.surely_parting, all)) +
               "\n";
    return out + "\n" + times_table(c);
}

std::string plans_compared_csv(plan::PlansCompared const& c) {
    std::string out;
    csv_line(out,
             {"measure", "beat", "pitch", "duration_s", "syllable", "vowel", "differ_in", "certainty",
              "first_zone", "first_p_turned", "first_advice", "first_target_ipa", "first_certainty",
              "second_zone", "second_p_turned", "second_advice", "second_target_ipa", "second_certainty"});
    auto const& [a, b] = c.plans;
    for (auto const& n : c.notes) {
        auto const& note = a.passage.notes[n.note];
        std::vector<std::string> row{note.measure,
                                     number(note.beat, 3),
                                     note.spelled.str(),
                                     number(in_seconds(note.length), 3),
                                     note.text(),
                                     vowel_of(a, n.note).ipa(),
                                     std::string(to_string(n.parting)),
                                     number(n.certainty, 2)};
        for (auto const* d : {&*a.notes[n.note].decision, &*b.notes[n.note].decision})
            for (auto const& cell :
                 {std::string(to_string(d->zone.zone)), number(d->zone.p_turned, 3),
                  std::string(to_string(d->advice)), d->target.shade.ipa(), number(d->certainty, 2)})
                row.push_back(cell);
        csv_line(out, row);
    }
    return out;
}

std::string plans_compared_json(plan::PlansCompared const& c) {
    auto const& passage = c.plans[0].passage;
    Json out{{"vowelway", 1}, {"title", passage.title}, {"technique", c.plans[0].technique}};
    out["singers"] = Json::array();
    for (std::size_t s = 0; s < 2; ++s) {
        auto const& t = c.times[s];
        out["singers"].push_back({{"singer", c.plans[s].singer.name},
                                  {"voice", to_string(c.plans[s].singer.voice)},
                                  {"average", c.plans[s].singer.average},
                                  {"hold_s", rounded(in_seconds(t.of[0]), 0.001)},
                                  {"migrate_s", rounded(in_seconds(t.of[1]), 0.001)},
                                  {"modify_s", rounded(in_seconds(t.of[2]), 0.001)}});
    }
    out["differ_s"] = rounded(in_seconds(c.parting), 0.001);
    out["surely_differ_s"] = rounded(in_seconds(c.surely_parting), 0.001);
    out["notes"] = Json::array();
    for (auto const& n : c.notes) {
        auto note = sung_note_json(passage.notes[n.note], passage.tuning);
        note["differ_in"] = n.parting == plan::Parting::none ? Json(nullptr) : Json(to_string(n.parting));
        note["certainty"] = rounded(n.certainty, 0.01);
        note["decisions"] = Json::array();
        for (std::size_t s = 0; s < 2; ++s) {
            Json decision = Json::object();
            put_decision(decision, *c.plans[s].notes[n.note].decision);
            for (std::size_t k = 0; k < 2; ++k)
                decision["fR" + std::to_string(k + 1) + "_way_cents"] = rounded(n.way[s][k].value, 1);
            note["decisions"].push_back(decision);
        }
        out["notes"].push_back(note);
    }
    out["warnings"] = warnings_json(c.remarks);
    return text_of(out);
}

} // namespace vowelway::report
