// SPDX-License-Identifier: MIT
// vowelway check: new probes against the profile or the targets of a plan.
#include "vowelway/analysis/check.hpp"
#include "cli/commands.hpp"
#include "cli/measuring.hpp"
#include "cli/outputs.hpp"
#include "cli/remarks.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <memory>

namespace vowelway::cli {
namespace {

using Json = nlohmann::ordered_json;

struct Settings {
    MeasuringOptions measuring;
    Outputs outputs;
    std::string plan, date;
};

/// A target of the plan and the notes that have it.
struct PlanTarget {
    Vowel vowel;
    std::string shade;
    Frequency r1, r2;
    double sung = 0;
    std::vector<std::string> bars;
};

constexpr std::size_t largest_plan = 64 << 20;

std::vector<PlanTarget> read_targets(std::string const& path) {
    std::error_code none;
    Place const place{path, 0, 0, {}};
    auto const size = std::filesystem::file_size(path, none);
    std::ifstream file(path, std::ios::binary);
    if (none || !file)
        throw InputError("the plan cannot be opened", "write one with: vowelway plan .. -o plan.json", place);
    if (size > largest_plan)
        throw InputError("is larger than 64 MiB: no plan", "name the JSON file of a plan", place);
    std::vector<PlanTarget> targets;
    try {
        auto const plan = nlohmann::json::parse(file);
        for (auto const& note : plan.at("notes")) {
            if (!note.contains("target") || !note.contains("ipa") || note.at("target").is_null() ||
                !note.at("ipa").is_string())
                continue;
            auto const& t = note.at("target");
            PlanTarget one{parse_vowel(note.at("ipa").get<std::string>()).quality(),
                           t.at("ipa").get<std::string>(),
                           hertz(10 * std::round(t.at("fR1_hz").get<double>() / 10)),
                           hertz(10 * std::round(t.at("fR2_hz").get<double>() / 10)),
                           note.value("duration_s", 0.0),
                           {}};
            auto found = std::find_if(targets.begin(), targets.end(), [&](PlanTarget const& o) {
                return o.vowel == one.vowel && o.r1 == one.r1 && o.r2 == one.r2;
            });
            if (found == targets.end())
                found = targets.insert(targets.end(), one);
            else
                found->sung += one.sung;
            auto const bar = note.value("measure", std::string());
            if (!bar.empty() && (found->bars.empty() || found->bars.back() != bar))
                found->bars.push_back(bar);
        }
    } catch (nlohmann::json::exception const& error) {
        throw InputError(std::string("is not a plan as JSON: ") + error.what(),
                         "write one with: vowelway plan .. -o plan.json", place);
    }
    std::stable_sort(targets.begin(), targets.end(),
                     [](auto const& a, auto const& b) { return a.sung > b.sung; });
    return targets;
}

/// The last measurement of this vowel with this kind of probe.
io::Measurement const* last_probe(io::Profile const& profile, analysis::MeasuredVowel const& v) {
    for (auto m = profile.history.rbegin(); m != profile.history.rend(); ++m)
        if (m->vowel.quality() == v.vowel.quality() && m->method == method_of(v.kind)) return &*m;
    return nullptr;
}

std::array<std::optional<analysis::Trend>, 2>
trends_of(io::Profile const& profile, analysis::MeasuredVowel const& v, std::string const& date) {
    std::array<std::vector<analysis::DatedValue>, 2> values;
    for (auto const& m : profile.history) {
        auto const day = analysis::day_number(m.date);
        if (!day || !(m.vowel.quality() == v.vowel.quality()) || m.method != method_of(v.kind)) continue;
        values[0].push_back({*day, m.heard[0].value_or(m.r1.centre), 0.02 * m.r1.centre});
        values[1].push_back({*day, m.heard[1].value_or(m.r2.centre), 0.02 * m.r2.centre});
    }
    if (auto const day = analysis::day_number(date))
        for (std::size_t k = 0; k < 2; ++k)
            if (auto const& f = v.measured.formants[k])
                values[k].push_back({*day, f->centre, std::max(f->sd, 0.02 * f->centre)});
    return {trend_of(values[0]), trend_of(values[1])};
}

std::vector<analysis::Checked> check_all(analysis::Measurements const& m, io::Profile const& profile,
                                         std::vector<PlanTarget> const& targets, std::string const& date,
                                         Remarks& remarks) {
    std::vector<analysis::Checked> all;
    for (auto const& v : m.vowels) {
        auto const trends = trends_of(profile, v, date);
        auto const* own = profile.singer.find(v.vowel);
        if (own) {
            analysis::Aim aim;
            aim.tract = {own->r1, own->r2, own->r3};
            if (auto const* last = last_probe(profile, v))
                for (std::size_t k = 0; k < 3; ++k) aim.heard[k] = last->heard[k];
            all.push_back({compare_with(v, aim), analysis::Checked::Against::profile, aim, "", {}, trends});
        } else {
            remarks.push_back(
                {Remark::Kind::assumed, "the profile has no /" + v.vowel.ipa() + "/ to compare with"});
        }
        for (auto const& t : targets) {
            if (!(t.vowel == v.vowel.quality())) continue;
            analysis::Aim aim;
            aim.tract[0] = Resonance{t.r1, 0.03 * t.r1, true, std::nullopt}; // no one hits a target nearer
            aim.tract[1] = Resonance{t.r2, 0.03 * t.r2, true, std::nullopt};
            all.push_back({compare_with(v, aim), analysis::Checked::Against::plan, aim, t.shade, t.bars, {}});
        }
    }
    return all;
}

std::string joined(std::vector<std::string> const& words, std::size_t most) {
    std::string out;
    for (std::size_t i = 0; i < std::min(words.size(), most); ++i) out += (i ? ", " : "") + words[i];
    return out + (words.size() > most ? ", .." : "");
}

/// With its sign, and no sign for nothing.
std::string signed_tenth(double v) { return std::abs(v) < 0.05 ? "0.0" : fmt::format("{:+.1f}", v); }

std::string table_of(std::vector<analysis::Checked> const& all) {
    using A = report::Table::Align;
    report::Table table({{"vowel"},
                         {"probe"},
                         {"against"},
                         {"F1|fR1", A::right},
                         {"semitones", A::right},
                         {"SD", A::right},
                         {"F2|fR2", A::right},
                         {"semitones", A::right},
                         {"SD", A::right},
                         {"verdict"}});
    std::string below;
    for (auto const& one : all) {
        auto const& c = one.comparison;
        std::vector<std::string> row{c.vowel.ipa(), std::string(to_string(c.kind)),
                                     one.against == analysis::Checked::Against::plan
                                         ? "plan " + one.shade + " bar " + joined(one.bars, 4)
                                         : std::string(one.against_what())};
        for (std::size_t k = 0; k < 2; ++k) {
            auto const& d = c.resonances[k];
            row.push_back(d ? fmt::format("{:.0f}", 10 * std::round(in_hertz(d->found) / 10)) : "-");
            row.push_back(d ? signed_tenth(d->distance.value / 100) : "-");
            row.push_back(d ? signed_tenth(d->in_sds) : "-");
        }
        row.push_back(std::string(to_string(c.verdict)));
        table.row(row);
        if (c.verdict != analysis::Verdict::there)
            below += fmt::format("/{}/ against the {}: {}\n", c.vowel.ipa(), one.against_what(), c.says);
        for (std::size_t k = 0; k < 2; ++k)
            if (one.trends[k] && one.trends[k]->clear())
                below +=
                    fmt::format("/{}/: F{} {} by {:.0f} ± {:.0f} cents a week over {} measurements\n",
                                c.vowel.ipa(), k + 1, one.trends[k]->per_week.value > 0 ? "rises" : "falls",
                                std::abs(one.trends[k]->per_week.value), one.trends[k]->per_week_sd.value,
                                one.trends[k]->points);
    }
    return all.empty() ? "" : table.str() + below;
}

Json json_of(std::vector<analysis::Checked> const& all) {
    Json checks = Json::array();
    for (auto const& one : all) {
        auto const& c = one.comparison;
        Json resonances = Json::array();
        for (std::size_t k = 0; k < 3; ++k) {
            auto const& d = c.resonances[k];
            if (!d) continue;
            auto const round = [](double v) { return std::round(100 * v) / 100; };
            resonances.push_back({{"resonance", (d->same_probe ? "F" : "fR") + std::to_string(k + 1)},
                                  {"found_hz", round(in_hertz(d->found))},
                                  {"found_sd_hz", round(in_hertz(d->found_sd))},
                                  {"aim_hz", round(in_hertz(d->aim))},
                                  {"aim_sd_hz", round(in_hertz(d->aim_sd))},
                                  {"semitones", round(d->distance.value / 100)},
                                  {"sds", round(d->in_sds)}});
        }
        Json trend = Json::array();
        for (auto const& t : one.trends)
            trend.push_back(t ? Json{{"cents_per_week", std::round(t->per_week.value)},
                                     {"sd", std::round(t->per_week_sd.value)},
                                     {"points", t->points},
                                     {"clear", t->clear()}}
                              : Json(nullptr));
        checks.push_back({{"vowel", c.vowel.ipa()},
                          {"probe", to_string(c.kind)},
                          {"takes", c.takes},
                          {"against", one.against == analysis::Checked::Against::plan ? "plan" : "profile"},
                          {"target_ipa", one.shade.empty() ? Json(nullptr) : Json(one.shade)},
                          {"measures", one.bars},
                          {"resonances", resonances},
                          {"verdict", to_string(c.verdict)},
                          {"says", c.says},
                          {"trend", trend}});
    }
    return checks;
}

void run(Settings const& s) {
    auto inputs = inputs_of(s.measuring);
    inputs.push_back(s.plan);
    s.outputs.check(inputs);
    auto const charts = chart_options(s.measuring.look);
    Remarks remarks;
    io::Profile profile;
    if (std::filesystem::exists(s.measuring.singer))
        profile = io::read_whole_profile(s.measuring.singer);
    else
        profile.singer = io::find_singer(s.measuring.singer, remarks);
    std::vector<PlanTarget> targets;
    if (!s.plan.empty()) {
        targets = read_targets(s.plan);
        if (targets.empty())
            remarks.push_back({Remark::Kind::caution,
                               s.plan + " has no notes with targets: make the plan of a score or a passage"});
    }
    auto const reference = reference_for(profile.singer);
    auto const request = request_for(s.measuring, reference, profile.shifts);
    auto const recordings = read_recordings(s.measuring, remarks);
    auto m = measure(recordings, request);
    auto const checked = check_all(m, profile, targets, s.date, remarks);
    m.remarks.insert(m.remarks.begin(), remarks.begin(), remarks.end());
    if (profile.singer.average)
        m.remarks.push_back({Remark::Kind::caution, std::string(average_voice_notice)});
    print_remarks(m.remarks);
    auto json = measurements_json(m, recordings);
    json["singer"] = profile.singer.name;
    json["checks"] = json_of(checked);
    auto table = table_of(checked);
    for (auto const& t : m.takes)
        if (!t.usable())
            table += fmt::format("{} {:.2f}-{:.2f} s /{}/: no number: {}\n", recordings[t.recording].name,
                                 in_seconds(t.span.start), in_seconds(t.span.end), t.vowel.ipa(), t.refused);
    auto map = probe_map(m, recordings, reference, s.date);
    map.checks = checked;
    s.outputs.write({{Form::table, [&] { return table; }},
                     {Form::json, [&] { return json.dump(2) + "\n"; }},
                     {Form::chart, [&](auto const& file) { return write_chart(map, charts, file); }}});
    if (m.vowels.empty())
        throw InputError("no take gives a number", "see the reason of each above, and record again");
}

} // namespace

void add_check(Command& program) {
    auto command = program.add("check", "New probes against a singer's profile or the targets of a plan");
    auto s = std::make_shared<Settings>();
    add_measuring_options(command, s->measuring);
    command.value("--singer", s->measuring.singer, "the profile (or a voice type) to compare with")
        .required();
    command.value("--plan", s->plan, "a plan as JSON: compare with its targets as well");
    command.value("--date", s->date, "day of the recording, for the trend over the profile's history");
    s->outputs.add_to(command, {Form::table, Form::json, Form::chart});
    add_chart_look(command, s->measuring.look);
    command.footer("Example: vowelway check take.wav --vowels \"i e a o u\" --singer me.yaml --plan "
                   "plan.json -o check.pdf");
    command.runs([s] { run(*s); });
}

} // namespace vowelway::cli
