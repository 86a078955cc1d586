// SPDX-License-Identifier: MIT
#include "vowelway/analysis/check_profile.hpp"

#include "vowelway/analysis/history.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway::analysis {

namespace {

/// The last measurement of this vowel with this kind of probe.
Measurement const* last_probe(Profile const& profile, MeasuredVowel const& v) {
    for (auto m = profile.history.rbegin(); m != profile.history.rend(); ++m)
        if (m->vowel.quality() == v.vowel.quality() && m->method == method_of(v.kind)) return &*m;
    return nullptr;
}

std::array<std::optional<Trend>, 2> trends_of(Profile const& profile, MeasuredVowel const& v,
                                              std::string const& date) {
    std::array<std::vector<DatedValue>, 2> values;
    for (auto const& m : profile.history) {
        auto const day = day_number(m.date);
        if (!day || !(m.vowel.quality() == v.vowel.quality()) || m.method != method_of(v.kind)) continue;
        values[0].push_back({*day, m.heard[0].value_or(m.r1.centre), 0.02 * m.r1.centre});
        values[1].push_back({*day, m.heard[1].value_or(m.r2.centre), 0.02 * m.r2.centre});
    }
    if (auto const day = day_number(date))
        for (std::size_t k = 0; k < 2; ++k)
            if (auto const& f = v.measured.formants[k])
                values[k].push_back({*day, f->centre, std::max(f->sd, 0.02 * f->centre)});
    return {trend_of(values[0]), trend_of(values[1])};
}

} // namespace

std::vector<Checked> check_all(Measurements const& m, Profile const& profile,
                               std::vector<PlanTarget> const& targets, std::string const& date,
                               Remarks& remarks) {
    std::vector<Checked> all;
    for (auto const& v : m.vowels) {
        auto const trends = trends_of(profile, v, date);
        auto const* own = profile.singer.find(v.vowel);
        if (own) {
            Aim aim;
            aim.tract = {own->r1, own->r2, own->r3};
            if (auto const* last = last_probe(profile, v))
                for (std::size_t k = 0; k < 3; ++k) aim.heard[k] = last->heard[k];
            all.push_back({compare_with(v, aim), Checked::Against::profile, aim, "", {}, trends});
        } else {
            remarks.push_back(
                {Remark::Kind::assumed, worded("the profile has no /{0}/ to compare with", v.vowel.ipa())});
        }
        for (auto const& t : targets) {
            if (!(t.vowel == v.vowel.quality())) continue;
            Aim aim;
            aim.tract[0] = Resonance{t.r1, 0.03 * t.r1, true, std::nullopt}; // no one hits a target nearer
            aim.tract[1] = Resonance{t.r2, 0.03 * t.r2, true, std::nullopt};
            all.push_back({compare_with(v, aim), Checked::Against::plan, aim, t.shade, t.bars, {}});
        }
    }
    return all;
}

} // namespace vowelway::analysis
