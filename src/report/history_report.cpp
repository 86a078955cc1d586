// SPDX-License-Identifier: MIT
#include "vowelway/report/history_report.hpp"

#include "report/json_parts.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::report {

namespace {

using analysis::HistoryEntry;

double tenth(double value) { return std::round(value * 10) / 10; }

std::string hertz_of(Resonance const& r) {
    return fmt::format("{:.0f} ±{:.0f}{}", in_hertz(r.centre), std::max(1.0, in_hertz(r.sd)),
                       r.sd_assumed ? "*" : "");
}

std::string step(Cents c, bool clear) {
    auto const st = tenth(in_semitones(c));
    return (st == 0 ? "0.0" : fmt::format("{:+.1f}", st)) + (clear ? " !" : "  ");
}

Json resonance_json(Resonance const& r, Tuning const& tuning) {
    auto const name = tuning.name(r.centre);
    return {{"hz", tenth(in_hertz(r.centre))},
            {"sd_hz", tenth(in_hertz(r.sd))},
            {"sd_assumed", r.sd_assumed},
            {"pitch", name.pitch.str()},
            {"cents", tenth(name.deviation.value)}};
}

} // namespace

std::string history_text(Profile const& profile, std::vector<HistoryEntry> const& history) {
    if (history.empty()) return worded("no measurements in this profile") + "\n";
    using enum Table::Align;
    Table table({{worded("vowel")},
                 {worded("date")},
                 {worded("method")},
                 {worded("probes"), right},
                 {"fR1 Hz", right},
                 {worded("as a pitch")},
                 {worded("change"), right},
                 {"fR2 Hz", right},
                 {worded("as a pitch")},
                 {worded("change"), right},
                 {worded("note")}});
    bool assumed = false;
    auto const& tuning = profile.singer.tuning;
    for (auto const& [m, c] : history) {
        assumed = assumed || m.r1.sd_assumed || m.r2.sd_assumed;
        table.row({c ? "" : m.vowel.ipa(), m.date.empty() ? "?" : m.date,
                   std::string(reworded(to_string(m.method))), std::to_string(m.probes), hertz_of(m.r1),
                   tuning.name(m.r1.centre).str(), c ? step(c->r1, c->r1_clear) : "", hertz_of(m.r2),
                   tuning.name(m.r2.centre).str(), c ? step(c->r2, c->r2_clear) : "", m.note});
    }
    auto out =
        table.str() +
        worded("change: semitones since the previous measurement; ! more than twice the combined deviation") +
        "\n";
    if (assumed) out += worded("* deviation assumed, not measured") + "\n";
    for (auto const& shift : profile.shifts) {
        out += worded("the singer's own shift for a {0}:", reworded(to_string(shift.method)));
        for (std::size_t i = 0; i < shift.of.size(); ++i)
            if (auto const& s = shift.of[i])
                out += fmt::format(" fR{} {:+.0f} ±{:.0f} Hz", i + 1, in_hertz(s->mean), in_hertz(s->sd));
        out += "; " + (shift.pairs == 1 ? worded("from 1 vowel") : worded("from {0} vowels", shift.pairs)) +
               "\n";
    }
    return out;
}

std::string history_json(Profile const& profile, std::vector<HistoryEntry> const& history) {
    Json out{{"vowelway", 1}, {"singer", profile.singer.name}};
    out["history"] = Json::array();
    for (auto const& [m, c] : history) {
        Json one{{"ipa", m.vowel.ipa()},
                 {"date", m.date.empty() ? Json(nullptr) : Json(m.date)},
                 {"method", to_string(m.method)},
                 {"probes", m.probes}};
        auto const put = [&](char const* name, std::optional<Resonance> const& r) {
            if (r) one[name] = resonance_json(*r, profile.singer.tuning);
        };
        put("fR1", m.r1);
        put("fR2", m.r2);
        put("fR3", m.r3);
        put("fR4", m.r4);
        for (std::size_t i = 0; i < m.heard.size(); ++i)
            if (m.heard[i]) one[fmt::format("F{}_hz", i + 1)] = tenth(in_hertz(*m.heard[i]));
        one["note"] = m.note;
        one["change"] = nullptr;
        if (c)
            one["change"] = {{"fR1_cents", tenth(c->r1.value)},
                             {"fR1_sd_cents", tenth(c->r1_sd.value)},
                             {"fR1_clear", c->r1_clear},
                             {"fR2_cents", tenth(c->r2.value)},
                             {"fR2_sd_cents", tenth(c->r2_sd.value)},
                             {"fR2_clear", c->r2_clear}};
        out["history"].push_back(std::move(one));
    }
    out["shift"] = Json::object();
    for (auto const& shift : profile.shifts) {
        Json one{{"pairs", shift.pairs}, {"date", shift.date}};
        for (std::size_t i = 0; i < shift.of.size(); ++i)
            if (auto const& s = shift.of[i])
                one[fmt::format("fR{}", i + 1)] = {{"hz", tenth(in_hertz(s->mean))},
                                                   {"sd_hz", tenth(in_hertz(s->sd))}};
        out["shift"][std::string(to_string(shift.method))] = std::move(one);
    }
    return text_of(out);
}

} // namespace vowelway::report
