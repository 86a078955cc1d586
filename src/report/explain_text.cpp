// SPDX-License-Identifier: MIT
#include "report/format.hpp"
#include "vowelway/report/explain_report.hpp"
#include "vowelway/report/plan_report.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>

#include <cmath>

namespace vowelway::report {

namespace {

using report::number;
using report::rounded;
using enum Table::Align;

std::string resonance(Resonance const& r) {
    return fmt::format("{} ±{}{}", number(rounded(in_hertz(r.centre), 10)),
                       number(rounded(in_hertz(r.sd), 5)), r.sd_assumed ? "*" : "");
}

std::string heading(plan::NoteExplanation const& e) {
    std::string out =
        e.title.empty() ? "" : e.title + (e.composer.empty() ? "" : " (" + e.composer + ")") + "\n";
    out += fmt::format("singer: {}; technique: {}\n", e.singer.name, e.technique);
    if (e.singer.average) out += fmt::format("{}\n", average_voice_notice);
    out += fmt::format("bar {}, beat {}: {}{}, fo {} Hz, {} s, vowel {}{}\n", e.note.measure,
                       number(e.note.beat, 2), e.syllable.empty() ? "" : e.syllable + " on ",
                       e.note.spelled.str(), number(in_hertz(e.note.pitch.frequency())),
                       number(in_seconds(e.note.length), 1), e.vowel.vowel.ipa(),
                       e.vowel.estimated ? " (" + e.vowel.origin + ")" : "");
    return out;
}

std::string advice(plan::NoteExplanation const& e) {
    auto const& d = e.decision;
    std::string out = fmt::format("\nadvice: {}", to_string(d.advice));
    for (std::size_t i = 0; i < d.gestures.size(); ++i) out += (i == 0 ? ": " : ", ") + d.gestures[i].words;
    if (e.changed) out += fmt::format(" (aim at {})", d.target.shade.ipa());
    out += "\nwhy: " + d.why + "\n";
    out += fmt::format("heard: {} if kept{}\n", d.heard_kept.words(),
                       e.changed ? fmt::format(", {} if changed; {} {} dB", d.heard.vowel.ipa(),
                                               d.gain.value < 0 ? "loses" : "gains",
                                               number(std::abs(d.gain.value), 1))
                                 : "");
    if (e.draws > 0)
        out += fmt::format("of {} random draws within the deviations: hold {} %, migrate {} %, modify {} %\n",
                           e.draws, number(100 * e.shares.hold), number(100 * e.shares.migrate),
                           number(100 * e.shares.modify));
    return out;
}

std::string cost_table(plan::NoteExplanation const& e) {
    auto const& other = e.changed ? e.changed : e.not_chosen;
    Table table({{"cost of"}, {"kept", right}, {e.changed ? "changed" : other ? "not chosen" : "", right}});
    auto const two = [](double v) { return fmt::format("{:.2f}", v); };
    auto const changed = [&](auto value) { return other ? value(*other) : std::string(); };
    for (auto const& term : plan::cost_term_names)
        table.row({fmt::format("{}: {}", term.name, term.words), two(e.kept.cost.*term.value),
                   changed([&](auto const& s) { return two(s.cost.*term.value); })});
    table.row(
        {"total", two(e.kept.cost.total()), changed([&](auto const& s) { return two(s.cost.total()); })});
    return table.str();
}

std::string harmonic_table(plan::NoteExplanation const& e) {
    std::vector<Table::Column> columns{{"harmonic"}, {"Hz", right}, {"kept dB", right}};
    if (e.changed) columns.insert(columns.end(), {{"changed dB", right}, {"difference", right}});
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
    Table resonances({{""}, {"kept", right}, {e.changed ? "changed" : other ? "not chosen" : "", right}});
    resonances.row({"fR1 Hz", resonance(e.kept.r1), other ? resonance(other->r1) : ""});
    resonances.row({"fR2 Hz", resonance(e.kept.r2), other ? resonance(other->r2) : ""});
    out += "\n" + resonances.str();
    if (e.kept.r1.sd_assumed || e.kept.r2.sd_assumed) out += "* deviation assumed, not measured\n";
    out += "\n" + cost_table(e) + "\n" + harmonic_table(e);
    return out + "\n" + std::string(voice_caution) + "\n";
}

} // namespace vowelway::report
