// SPDX-License-Identifier: MIT
#include "vowelway/report/check_report.hpp"

#include "report/measurement_parts.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/measurement_report.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::report {

namespace {

std::string joined(std::vector<std::string> const& words, std::size_t most) {
    std::string out;
    for (std::size_t i = 0; i < std::min(words.size(), most); ++i) out += (i ? ", " : "") + words[i];
    return out + (words.size() > most ? ", .." : "");
}

/// With its sign, and no sign for nothing.
std::string signed_tenth(double v) { return std::abs(v) < 0.05 ? "0.0" : fmt::format("{:+.1f}", v); }

/// "fR1 Hz", of the sound "F1 Hz"; both where some takes are compared with a last probe and some are not.
std::string head_of(std::vector<analysis::Checked> const& all, std::size_t k) {
    bool sound = false, tract = false;
    for (auto const& one : all)
        if (auto const& d = one.comparison.resonances[k]) (d->same_probe ? sound : tract) = true;
    auto const name = std::to_string(k + 1);
    return (sound && tract ? "F" + name + "/fR" + name : (sound ? "F" : "fR") + name) + " Hz";
}

std::string table_of(std::vector<analysis::Checked> const& all) {
    using A = Table::Align;
    Table table({{worded("vowel")},
                 {worded("probe")},
                 {worded("against")},
                 {head_of(all, 0), A::right},
                 {worded("semitones"), A::right},
                 {"SD", A::right},
                 {head_of(all, 1), A::right},
                 {worded("semitones"), A::right},
                 {"SD", A::right},
                 {worded("verdict")}});
    std::string below;
    for (auto const& one : all) {
        auto const& c = one.comparison;
        std::vector<std::string> row{c.vowel.ipa(), std::string(reworded(to_string(c.kind))),
                                     one.against == analysis::Checked::Against::plan
                                         ? worded("plan {0} bar {1}", one.shade, joined(one.bars, 4))
                                         : std::string(reworded(one.against_what()))};
        for (std::size_t k = 0; k < 2; ++k) {
            auto const& d = c.resonances[k];
            row.push_back(d ? fmt::format("{:.0f}", 10 * std::round(in_hertz(d->found) / 10)) : "-");
            row.push_back(d ? signed_tenth(d->distance.value / 100) : "-");
            row.push_back(d ? signed_tenth(d->in_sds) : "-");
        }
        row.push_back(std::string(reworded(to_string(c.verdict))));
        table.row(row);
        if (c.verdict != analysis::Verdict::there)
            below +=
                worded("/{0}/ against the {1}: {2}", c.vowel.ipa(), reworded(one.against_what()), c.says) +
                "\n";
        for (std::size_t k = 0; k < 2; ++k)
            if (one.trends[k] && one.trends[k]->clear())
                below +=
                    worded("/{0}/: F{1} {2} by {3} ± {4} cents a week over {5} measurements", c.vowel.ipa(),
                           k + 1, one.trends[k]->per_week.value > 0 ? worded("rises") : worded("falls"),
                           fmt::format("{:.0f}", std::abs(one.trends[k]->per_week.value)),
                           fmt::format("{:.0f}", one.trends[k]->per_week_sd.value), one.trends[k]->points) +
                    "\n";
    }
    if (all.empty()) return "";
    return table.str() +
           worded("semitones: from where the vowel should be; SD: that in standard deviations of both "
                  "together.") +
           "\n" + below;
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

} // namespace

std::string check_text(analysis::Measurements const& m, std::vector<analysis::Checked> const& checks,
                       std::vector<std::string> const& files) {
    return lesson_text(m.lesson) + table_of(checks) + kinds_text(m, files) + refusals_text(m, files);
}

std::string check_json(analysis::Measurements const& m, std::vector<analysis::Checked> const& checks,
                       std::vector<std::string> const& files, std::string const& singer) {
    auto out = measurement_parts(m, files);
    out["singer"] = singer;
    out["checks"] = json_of(checks);
    return text_of(out, 2);
}

} // namespace vowelway::report
