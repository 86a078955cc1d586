// SPDX-License-Identifier: MIT
#include "vowelway/analysis/check.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdio>

namespace vowelway::analysis {
namespace {

constexpr double least_heard_share = 0.02; // of F: how well the same probe repeats on another day

double square(Frequency f) { return in_hertz(f) * in_hertz(f); }

Distance between(Frequency found, Frequency found_sd, Frequency aim, Frequency aim_sd, bool same_probe) {
    double const sd = std::sqrt(square(found_sd) + square(aim_sd));
    return {
        found,     found_sd, aim, aim_sd, interval(aim, found), in_hertz(found - aim) / std::max(sd, 1e-9),
        same_probe};
}

Verdict verdict_of(Distance const& d) {
    double const share = std::abs(in_hertz(d.found - d.aim)) / in_hertz(d.aim);
    if (std::abs(d.in_sds) > 2 && share > least_noticed) return Verdict::moved;
    return std::abs(d.distance.value) <= near_enough.value ? Verdict::there : Verdict::unclear;
}

std::string words(std::size_t k, Distance const& d) {
    char text[32];
    auto const name = d.same_probe ? 'F' : 'R';
    char const* const prefix = name == 'F' ? "F" : "fR";
    if (verdict_of(d) == Verdict::there) return worded("{0}{1} there", prefix, k + 1);
    auto const tenths = [&](double value) {
        std::snprintf(text, sizeof text, "%.1f", std::abs(value));
        return std::string(text);
    };
    auto const far = tenths(d.distance.value / 100), sure = tenths(d.in_sds);
    auto const out = d.distance.value > 0
                         ? worded("{0}{1} {2} semitones high ({3} SD)", prefix, k + 1, far, sure)
                         : worded("{0}{1} {2} semitones low ({3} SD)", prefix, k + 1, far, sure);
    return verdict_of(d) == Verdict::unclear ? worded("{0}, too uncertain to tell", out) : out;
}

/// Weighted straight line through all values but one; nothing where all are of one day. Scatter about the
/// line that the deviations do not explain makes its slope less sure.
std::optional<Trend> line_through(std::vector<DatedValue> const& values, std::size_t left_out) {
    double w = 0, wx = 0, wy = 0, wxx = 0, wxy = 0, wyy = 0;
    int points = 0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (i == left_out) continue;
        auto const& v = values[i];
        double const sd = 1200 / std::log(2.0) * (v.sd / v.centre), weight = 1 / std::max(sd * sd, 1.0);
        double const week = v.days / 7, cents = 1200 * std::log2(in_hertz(v.centre));
        w += weight, wx += weight * week, wy += weight * cents, ++points;
        wxx += weight * week * week, wxy += weight * week * cents, wyy += weight * cents * cents;
    }
    double const spread = wxx - wx * wx / w;
    if (spread <= 1e-9 * wxx || spread <= 0) return std::nullopt;
    double const slope = (wxy - wx * wy / w) / spread;
    double const left = std::max(wyy - wy * wy / w - slope * slope * spread, 0.0);
    double const more = points > 2 ? std::max(1.0, left / (points - 2)) : 1;
    Trend trend;
    trend.per_week = {slope};
    trend.per_week_sd = {std::sqrt(more / spread)};
    trend.points = points;
    return trend;
}

} // namespace

std::string_view to_string(Verdict verdict) {
    switch (verdict) {
    case Verdict::there:
        return to_word("there");
    case Verdict::unclear:
        return to_word("unclear");
    case Verdict::moved:
        return to_word("moved");
    }
    return "";
}

ProbeComparison compare_with(MeasuredVowel const& found, Aim const& aim) {
    ProbeComparison c;
    c.vowel = found.vowel;
    c.kind = found.kind;
    c.takes = found.takes;
    for (std::size_t k = 0; k < 3; ++k) {
        auto const& heard = found.measured.formants[k];
        if (heard && aim.heard[k])
            c.resonances[k] =
                between(heard->centre, heard->sd, *aim.heard[k], least_heard_share * *aim.heard[k], true);
        else if (found.tract.resonances[k] && aim.tract[k])
            c.resonances[k] = between(found.tract.resonances[k]->centre, found.tract.resonances[k]->sd,
                                      aim.tract[k]->centre, aim.tract[k]->sd, false);
        if (k < 2 && c.resonances[k]) {
            c.verdict = std::max(c.verdict, verdict_of(*c.resonances[k]));
            c.says += (c.says.empty() ? "" : "; ") + words(k, *c.resonances[k]);
        }
    }
    return c;
}

std::string_view Checked::against_what() const {
    if (against == Against::plan) return to_word("plan");
    return comparison.resonances[0] && comparison.resonances[0]->same_probe ? to_word("last probe")
                                                                            : to_word("profile");
}

std::optional<Trend> trend_of(std::vector<DatedValue> const& values) {
    if (values.size() < 3) return std::nullopt;
    auto trend = line_through(values, values.size());
    if (!trend) return std::nullopt;
    double const way = trend->per_week.value < 0 ? -1 : 1;
    trend->without_one = 1e9;
    for (std::size_t left_out = 0; left_out < values.size(); ++left_out) {
        auto const rest = line_through(values, left_out);
        trend->without_one =
            std::min(trend->without_one, rest ? way * (rest->per_week / rest->per_week_sd) : 0);
    }
    return trend;
}

std::optional<double> day_number(std::string_view iso) {
    int parts[3] = {0, 0, 0};
    if (iso.size() != 10 || iso[4] != '-' || iso[7] != '-') return std::nullopt;
    std::size_t const from[3] = {0, 5, 8}, length[3] = {4, 2, 2};
    for (int i = 0; i < 3; ++i) {
        auto const word = iso.substr(from[i], length[i]);
        auto const [end, error] = std::from_chars(word.data(), word.data() + word.size(), parts[i]);
        if (error != std::errc{} || end != word.data() + word.size()) return std::nullopt;
    }
    std::chrono::year_month_day const day{std::chrono::year{parts[0]},
                                          std::chrono::month{static_cast<unsigned>(parts[1])},
                                          std::chrono::day{static_cast<unsigned>(parts[2])}};
    if (!day.ok()) return std::nullopt;
    return static_cast<double>(std::chrono::sys_days{day}.time_since_epoch().count());
}

} // namespace vowelway::analysis
