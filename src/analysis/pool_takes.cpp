// SPDX-License-Identifier: MIT
#include "analysis/pool_takes.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace vowelway::analysis {
namespace {

constexpr double gross = 0.15;

struct Pooled {
    Formant formant;
    std::optional<Cents> spread;
};

std::optional<Pooled> pool(std::vector<Formant> all, std::size_t takes) {
    if (2 * all.size() < takes || all.empty()) return std::nullopt;
    std::sort(all.begin(), all.end(), [](Formant const& a, Formant const& b) { return a.centre < b.centre; });
    auto const middle = all[all.size() / 2].centre;
    if (all.size() >= 3)
        std::erase_if(all, [&](Formant const& f) {
            return std::abs(in_hertz(f.centre - middle)) > gross * in_hertz(middle);
        });
    auto const n = static_cast<double>(all.size());
    double mean = 0, within = 0, width = 0;
    for (auto const& f : all) {
        mean += in_hertz(f.centre) / n;
        within += in_hertz(f.sd) * in_hertz(f.sd) / n;
        width += in_hertz(f.bandwidth) / n;
    }
    double between = 0;
    if (all.size() > 1)
        for (auto const& f : all) between += std::pow(in_hertz(f.centre) - mean, 2) / (n - 1);
    double const extra = std::max(0.0, between - within); // scatter of the takes beyond their own errors
    double weights = 0, sum = 0;
    for (auto const& f : all) {
        double const w = 1 / (in_hertz(f.sd) * in_hertz(f.sd) + extra);
        weights += w;
        sum += w * in_hertz(f.centre);
    }
    double const centre = sum / weights;
    // Part of a take's error is the method's own and stays in the mean: half of the variance is kept.
    double const sd = std::sqrt((0.5 * within + extra) / n + 0.5 * within);
    Pooled made{{hertz(centre), hertz(sd), hertz(width)}, std::nullopt};
    if (all.size() > 1) made.spread = Cents{1200 / std::log(2.0) * std::sqrt(between) / mean};
    return made;
}

} // namespace

MeasuredVowel pool_takes(std::vector<Take const*> const& takes) {
    MeasuredVowel vowel;
    vowel.vowel = takes.front()->vowel;
    vowel.kind = takes.front()->excitation.kind;
    vowel.takes = static_cast<int>(takes.size());
    for (std::size_t k = 0; k < 3; ++k) {
        std::vector<Formant> all;
        for (auto const* t : takes)
            if (t->measured.formants[k]) all.push_back(*t->measured.formants[k]);
        auto const pooled = pool(std::move(all), takes.size());
        if (!pooled) continue;
        vowel.measured.formants[k] = pooled->formant;
        vowel.repeat_spread[k] = pooled->spread;
        if (k < 2 && pooled->spread && *pooled->spread > repeats_within) {
            vowel.findings.push_back(
                {Finding::Kind::scattered,
                 worded("repeats of F{0} differ by {1} cents", k + 1, std::lrint(pooled->spread->value)),
                 worded("repeat it until the vowel comes out the same")});
        }
    }
    for (auto const* t : takes) {
        vowel.measured.frames += t->measured.frames;
        vowel.measured.settings += t->measured.settings;
    }
    return vowel;
}

} // namespace vowelway::analysis
