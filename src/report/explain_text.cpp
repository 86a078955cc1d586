// SPDX-License-Identifier: MIT
#include "report/format.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/explain_report.hpp"
#include "vowelway/report/plan_report.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace vowelway::report {

namespace {

using report::number;
using report::rounded;
using enum Table::Align;

std::string heading(plan::NoteExplanation const& e) {
    std::string out =
        e.title.empty() ? "" : e.title + (e.composer.empty() ? "" : " (" + e.composer + ")") + "\n";
    out += worded("singer: {0}", e.singer.name) + "; " + worded("technique: {0}", e.technique) + "\n";
    if (e.singer.average) out += fmt::format("{}\n", reworded(average_voice_notice));
    out +=
        worded("bar {0}, beat {1}", e.note.measure, number(e.note.beat, 2)) + ": " +
        (e.syllable.empty() ? e.note.spelled.str() : worded("{0} on {1}", e.syllable, e.note.spelled.str())) +
        fmt::format(", fo {} Hz, {} s, ", number(in_hertz(e.note.pitch.frequency())),
                    number(in_seconds(e.note.length), 1)) +
        worded("vowel {0}", e.vowel.vowel.ipa()) +
        (e.vowel.estimated ? " (" + std::string(reworded(e.vowel.origin)) + ")" : "") + "\n";
    return out;
}

std::string advice(plan::NoteExplanation const& e) {
    auto const& d = e.decision;
    std::string out = "\n" + worded("advice: {0}", reworded(to_string(d.advice)));
    for (std::size_t i = 0; i < d.gestures.size(); ++i) out += (i == 0 ? ": " : ", ") + d.gestures[i].words;
    if (e.changed) out += " (" + worded("aim at {0}", d.target.shade.ipa()) + ")";
    out += "\n" + worded("why: {0}", d.why) + "\n";
    auto const gain = number(std::abs(d.gain.value), std::abs(d.gain.value) < 1 ? 1 : 0);
    bool const alike = e.changed && d.heard.vowel == d.heard_kept.vowel;
    out += alike ? worded("heard: {0} either way", d.heard.vowel.ipa())
                 : worded("heard: {0} if kept", d.heard_kept.words());
    if (e.changed)
        out += (alike ? "" : ", " + worded("{0} if changed", d.heard.vowel.ipa())) + "; " +
               (d.gain.value < 0 ? worded("loses {0} dB", gain) : worded("gains {0} dB", gain));
    out += "\n";
    if (e.draws > 0)
        out += worded("of {0} random draws within the deviations: hold {1} %, migrate {2} %, modify {3} %",
                      e.draws, number(100 * e.shares.hold), number(100 * e.shares.migrate),
                      number(100 * e.shares.modify)) +
               "\n";
    return out;
}

// Names and words of the terms stand in a public header, where the table of a language does not look.
constexpr std::array term_texts{to_word("text"),      to_word("the vowel heard"),
                                to_word("ring"),      to_word("level missing"),
                                to_word("stability"), to_word("harmonic above fR1"),
                                to_word("relation"),  to_word("the technique's wish"),
                                to_word("effort"),    to_word("size of the gesture"),
                                to_word("attention"), to_word("a change at all"),
                                to_word("line"),      to_word("moving between notes")};
constexpr bool all_terms_told() {
    for (std::size_t i = 0; i < plan::cost_term_names.size(); ++i)
        if (plan::cost_term_names[i].name != term_texts[2 * i] ||
            plan::cost_term_names[i].words != term_texts[2 * i + 1])
            return false;
    return true;
}
static_assert(term_texts.size() == 2 * plan::cost_term_names.size() && all_terms_told());

std::string other_column(plan::NoteExplanation const& e) {
    return e.changed ? worded("changed") : e.not_chosen ? worded("not chosen") : std::string();
}

std::string cost_table(plan::NoteExplanation const& e) {
    auto const& other = e.changed ? e.changed : e.not_chosen;
    Table table({{worded("cost of")}, {worded("kept"), right}, {other_column(e), right}});
    auto const two = [](double v) { return fmt::format("{:.2f}", v); };
    auto const changed = [&](auto value) { return other ? value(*other) : std::string(); };
    for (auto const& term : plan::cost_term_names)
        table.row({fmt::format("{}: {}", reworded(term.name), reworded(term.words)),
                   two(e.kept.cost.*term.value),
                   changed([&](auto const& s) { return two(s.cost.*term.value); })});
    table.row({worded("total"), two(e.kept.cost.total()),
               changed([&](auto const& s) { return two(s.cost.total()); })});
    return table.str();
}

std::string harmonic_table(plan::NoteExplanation const& e) {
    std::vector<Table::Column> columns{{worded("harmonic")}, {"Hz", right}, {worded("kept dB"), right}};
    if (e.changed)
        columns.insert(columns.end(), {{worded("changed dB"), right}, {worded("difference"), right}});
    Table table(columns);
    for (std::size_t i = 0; i < e.harmonics.size(); ++i) {
        std::vector<std::string> cells{Harmonic{static_cast<int>(i) + 1}.str(),
                                       number(in_hertz(e.harmonics[i])),
                                       fmt::format("{:.0f}", e.kept.harmonics[i].value)};
        if (e.changed) {
            cells.push_back(fmt::format("{:.0f}", e.changed->harmonics[i].value));
            cells.push_back(
                fmt::format("{:+.0f}", std::round((e.changed->harmonics[i] - e.kept.harmonics[i]).value) +
                                           0.0)); // no negative zero
        }
        table.row(cells);
    }
    return table.str();
}

} // namespace

std::string explanation_text(plan::NoteExplanation const& e) {
    std::string out = heading(e) + advice(e);
    auto const& other = e.changed ? e.changed : e.not_chosen;
    Table resonances({{""}, {worded("kept"), right}, {other_column(e), right}});
    resonances.row({"fR1 Hz", resonance(e.kept.r1), other ? resonance(other->r1) : ""});
    resonances.row({"fR2 Hz", resonance(e.kept.r2), other ? resonance(other->r2) : ""});
    out += "\n" + resonances.str();
    if (e.kept.r1.sd_assumed || e.kept.r2.sd_assumed)
        out += worded("* deviation assumed, not measured") + "\n";
    out += "\n" + cost_table(e) + worded("1: a clear loss of the vowel for a second; the lower total wins") +
           "\n\n" + harmonic_table(e) + worded("level of each harmonic, 1 m from the mouth in the open") +
           "\n";
    return out + "\n" + std::string(reworded(voice_caution)) + "\n";
}

} // namespace vowelway::report
