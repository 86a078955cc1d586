// SPDX-License-Identifier: MIT
#include "report/csv.hpp"
#include "report/format.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/compare_report.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace vowelway::report {

namespace {

static_assert(plan::generic_passaggio_label ==
              to_word("generic, from memory (R. Miller 1986, 2000); no singer was measured"));

using report::csv_line;
using report::number;
using report::pitch_with_uncertainty;
using report::rounded;
using report::signed_semitones;
using Json = nlohmann::ordered_json;

constexpr std::size_t widest_table = 4; // singers side by side; more go below each other

std::string name_of(Singer const& singer) {
    return singer.name.empty() ? std::string(reworded(to_string(singer.voice))) : singer.name;
}

std::string point(plan::Comparison const& c, std::size_t singer, plan::ComparedRow const& row, bool turning) {
    auto const& v = row.of[singer];
    if (!v) return "";
    auto const& crossing = turning ? v->turning : v->meeting;
    return pitch_with_uncertainty(c.singers[singer].tuning, crossing.pitch, crossing.sd) +
           (v->resonances.estimated ? " ?" : "");
}

/// One block of columns: singers from `first` to before `last`.
std::string points_table(plan::Comparison const& c, std::size_t first, std::size_t last, bool turning) {
    std::vector<Table::Column> columns{{worded("vowel")}};
    for (auto s = first; s < last; ++s) columns.push_back({name_of(c.singers[s])});
    Table table(columns);
    for (auto const& row : c.rows) {
        std::vector<std::string> cells{row.vowel.ipa()};
        for (auto s = first; s < last; ++s) cells.push_back(point(c, s, row, turning));
        table.row(std::move(cells));
    }
    return table.str();
}

std::string points(plan::Comparison const& c, bool turning) {
    std::string out;
    for (std::size_t first = 0; first < c.singers.size(); first += widest_table)
        out += (first ? "\n" : "") +
               points_table(c, first, std::min(first + widest_table, c.singers.size()), turning);
    return out;
}

/// Intervals from the first singer to each other one.
std::string intervals(plan::Comparison const& c) {
    std::vector<Table::Column> columns{{worded("vowel")}};
    for (std::size_t s = 1; s < c.singers.size(); ++s)
        columns.push_back({name_of(c.singers[s]), Table::Align::right});
    Table table(columns);
    for (auto const& row : c.rows) {
        std::vector<std::string> cells(c.singers.size());
        cells[0] = row.vowel.ipa();
        for (auto const& d : row.differences)
            if (d.first == 0)
                cells[d.second] = signed_semitones(d.r1) + (plan::clear(d.p_r1_higher) ? " *" : "  ");
        table.row(std::move(cells));
    }
    return table.str();
}

std::string passaggi(plan::Comparison const& c) {
    std::string out;
    std::vector<VoiceType> seen;
    for (auto const& singer : c.singers) {
        if (std::find(seen.begin(), seen.end(), singer.voice) != seen.end()) continue;
        seen.push_back(singer.voice);
        if (auto const p = plan::generic_passaggio(singer.voice))
            out += "  " +
                   worded("{0}: {1} and {2}", reworded(p->voice_class), p->first.str(), p->second.str()) +
                   "\n";
    }
    return out;
}

Json crossing_json(plan::Crossing const& c, Tuning const& tuning) {
    auto const name = tuning.name(c.pitch);
    return {{"hz", rounded(in_hertz(c.pitch.frequency()), 0.01)},
            {"pitch", name.pitch.str()},
            {"cents", rounded(name.deviation.value, 0.1)},
            {"sd_cents", rounded(c.sd.value, 0.1)}};
}

} // namespace

std::string comparison_text(plan::Comparison const& c) {
    std::string out = worded("Where each vowel turns (2fo = fR1)") + "\n\n" + points(c, true);
    out += "\n" + worded("Where the voice meets the resonance (fo = fR1), an octave higher") + "\n\n" +
           points(c, false);
    out += "\n" + worded("Semitones from {0}", name_of(c.singers.front())) + "\n\n" + intervals(c);
    out += worded("* further apart than the uncertainty of both: 95 % sure which is higher") + "\n";
    bool estimated = false;
    for (auto const& row : c.rows)
        for (auto const& v : row.of) estimated = estimated || (v && v->resonances.estimated);
    if (estimated) out += worded("? estimated, not measured") + "\n";
    if (auto const generic = passaggi(c); !generic.empty())
        out += "\n" + worded("Passaggio in the handbooks: {0}", reworded(plan::generic_passaggio_label)) +
               "\n" + generic;
    std::string averages;
    for (auto const& singer : c.singers)
        if (singer.average) averages += (averages.empty() ? "" : ", ") + name_of(singer);
    if (!averages.empty()) out += fmt::format("\n{}: {}\n", averages, reworded(average_voice_notice));
    return out;
}

std::string comparison_csv(plan::Comparison const& c) {
    std::string out;
    csv_line(out, {"vowel",
                   "singer",
                   "voice",
                   "average",
                   "estimated",
                   "fR1_hz",
                   "fR1_sd_hz",
                   "fR2_hz",
                   "fR2_sd_hz",
                   "turning_hz",
                   "turning_pitch",
                   "turning_cents",
                   "meeting_hz",
                   "meeting_pitch",
                   "meeting_cents",
                   "sd_cents",
                   "cents_from_first",
                   "sd_of_interval_cents",
                   "p_higher",
                   "clear"});
    for (auto const& row : c.rows)
        for (std::size_t s = 0; s < row.of.size(); ++s) {
            auto const& v = row.of[s];
            if (!v) continue;
            auto const& singer = c.singers[s];
            auto const& r = v->resonances;
            std::vector<std::string> line{row.vowel.ipa(), name_of(singer),
                                          std::string(reworded(to_string(singer.voice))),
                                          singer.average ? "true" : "false", r.estimated ? "true" : "false"};
            for (auto const& f : {r.r1.centre, r.r1.sd, r.r2.centre, r.r2.sd})
                line.push_back(number(in_hertz(f), 1));
            for (auto const* crossing : {&v->turning, &v->meeting}) {
                auto const name = singer.tuning.name(crossing->pitch);
                line.push_back(number(in_hertz(crossing->pitch.frequency()), 2));
                line.push_back(name.pitch.str());
                line.push_back(number(name.deviation.value, 1));
            }
            line.push_back(number(v->turning.sd.value, 1));
            auto const d =
                std::find_if(row.differences.begin(), row.differences.end(),
                             [&](plan::Difference const& x) { return x.first == 0 && x.second == s; });
            if (d == row.differences.end())
                line.insert(line.end(), 4, "");
            else
                for (auto const& cell :
                     {number(d->r1.value, 1), number(d->r1_sd.value, 1), number(d->p_r1_higher, 4),
                      std::string(plan::clear(d->p_r1_higher) ? "true" : "false")})
                    line.push_back(cell);
            csv_line(out, line);
        }
    return out;
}

std::string comparison_json(plan::Comparison const& c) {
    Json out{{"vowelway", 1}};
    out["singers"] = Json::array();
    for (auto const& singer : c.singers) {
        Json s{{"singer", name_of(singer)},
               {"voice", to_string(singer.voice)},
               {"average", singer.average},
               {"a4_hz", rounded(in_hertz(singer.tuning.a4), 0.01)}};
        if (auto const p = plan::generic_passaggio(singer.voice))
            s["generic_passaggio"] = {{"voice_class", p->voice_class},
                                      {"first", p->first.str()},
                                      {"second", p->second.str()},
                                      {"source", plan::generic_passaggio_label}};
        else
            s["generic_passaggio"] = nullptr;
        out["singers"].push_back(std::move(s));
    }
    out["vowels"] = Json::array();
    for (auto const& row : c.rows) {
        Json v{{"ipa", row.vowel.ipa()}, {"x_sampa", row.vowel.x_sampa()}};
        v["singers"] = Json::array();
        for (std::size_t s = 0; s < row.of.size(); ++s) {
            if (!row.of[s]) {
                v["singers"].push_back(nullptr);
                continue;
            }
            auto const& r = row.of[s]->resonances;
            Json one{{"fR1_hz", rounded(in_hertz(r.r1.centre), 0.1)},
                     {"fR1_sd_hz", rounded(in_hertz(r.r1.sd), 0.1)},
                     {"fR2_hz", rounded(in_hertz(r.r2.centre), 0.1)},
                     {"fR2_sd_hz", rounded(in_hertz(r.r2.sd), 0.1)},
                     {"estimated", r.estimated}};
            one["turning"] = crossing_json(row.of[s]->turning, c.singers[s].tuning);
            one["meeting"] = crossing_json(row.of[s]->meeting, c.singers[s].tuning);
            v["singers"].push_back(std::move(one));
        }
        v["differences"] = Json::array();
        for (auto const& d : row.differences)
            v["differences"].push_back({{"first", d.first},
                                        {"second", d.second},
                                        {"fR1_cents", rounded(d.r1.value, 0.1)},
                                        {"fR1_sd_cents", rounded(d.r1_sd.value, 0.1)},
                                        {"fR1_p_higher", rounded(d.p_r1_higher, 0.0001)},
                                        {"fR1_clear", plan::clear(d.p_r1_higher)},
                                        {"fR2_cents", rounded(d.r2.value, 0.1)},
                                        {"fR2_sd_cents", rounded(d.r2_sd.value, 0.1)},
                                        {"fR2_p_higher", rounded(d.p_r2_higher, 0.0001)},
                                        {"fR2_clear", plan::clear(d.p_r2_higher)}});
        out["vowels"].push_back(std::move(v));
    }
    out["warnings"] = Json::array();
    for (auto const& r : c.remarks)
        out["warnings"].push_back({{"kind", to_string(r.kind)}, {"text", r.text}});
    return out.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace vowelway::report
