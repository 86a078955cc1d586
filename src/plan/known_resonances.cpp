// SPDX-License-Identifier: MIT
#include "vowelway/plan/known_resonances.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace vowelway::plan {

namespace {

// Chart steps over which a measured vowel still speaks for its neighbour.
constexpr double reach = 2.5;
// Least relative deviation of an estimate, and what one chart step of guessing adds to it.
constexpr double least_deviation = 0.06, deviation_per_step = 0.06;

struct Ratio {
    double log_scale = 0, log_sd = least_deviation;
};

// How the singer's k-th resonance compares with the reference's, near `vowel`.
Ratio local_ratio(Vowel const& vowel, ResonanceNumber k, Singer const& singer, Singer const& reference) {
    double weights = 0, sum = 0, squares = 0;
    int count = 0;
    for (auto const& own : singer.vowels) {
        auto const* other = reference.find(own.vowel);
        if (!other) continue;
        auto const a = own.get(k), b = other->get(k);
        if (!a || !b) continue;
        double const step = chart_distance(vowel, own.vowel) / reach;
        double const weight = std::exp(-0.5 * step * step) + 0.05;
        double const log_ratio = std::log(a->centre / b->centre);
        weights += weight;
        sum += weight * log_ratio;
        squares += weight * log_ratio * log_ratio;
        ++count;
    }
    if (count == 0)
        return {0, 0.10}; // no vowel in common: the average itself, with the spread between speakers
    double const mean = sum / weights;
    double const scatter = count > 2 ? std::sqrt(std::max(0.0, squares / weights - mean * mean)) : 0.10;
    return {mean, std::hypot(least_deviation, scatter * std::sqrt(1 + 1.0 / count))};
}

Resonance scaled(Resonance const& from, Ratio ratio) {
    Resonance out = from;
    out.centre = from.centre * std::exp(ratio.log_scale);
    out.sd = out.centre * ratio.log_sd;
    out.sd_assumed = true;
    return out;
}

VowelResonances estimate(VowelResonances const& model, Vowel const& vowel, Singer const& singer,
                         Singer const& reference, double steps) {
    VowelResonances out = model;
    out.vowel = vowel.quality();
    out.estimated = true;
    auto const of = [&](int k, Resonance const& r) {
        auto ratio = local_ratio(vowel, {k}, singer, reference);
        ratio.log_sd = std::hypot(ratio.log_sd, deviation_per_step * steps);
        return scaled(r, ratio);
    };
    out.r1 = of(1, model.r1);
    out.r2 = of(2, model.r2);
    if (model.r3) out.r3 = of(3, *model.r3);
    if (model.r4) out.r4 = of(4, *model.r4);
    out.origin = worded("estimated from the {0}, scaled by this singer's own vowels", reference.name);
    if (steps > 0) out.origin += "; " + worded("taken as the nearest vowel there, {0}", model.vowel.ipa());
    return out;
}

VowelResonances const* nearest(Vowel const& vowel, Singer const& singer) {
    auto const found =
        std::min_element(singer.vowels.begin(), singer.vowels.end(), [&](auto const& a, auto const& b) {
            return chart_distance(vowel, a.vowel) < chart_distance(vowel, b.vowel);
        });
    return found == singer.vowels.end() ? nullptr : &*found;
}

} // namespace

std::optional<VowelResonances> resonances_of(Vowel const& vowel, Singer const& singer,
                                             Singer const* reference) {
    if (auto const* own = singer.find(vowel)) return *own;
    if (reference && !singer.average)
        if (auto const* model = reference->find(vowel)) return estimate(*model, vowel, singer, *reference, 0);
    Singer const& pool = reference && !singer.average && !reference->vowels.empty() ? *reference : singer;
    auto const* model = nearest(vowel, pool);
    if (!model) return std::nullopt;
    double const steps = chart_distance(vowel, model->vowel);
    if (&pool != &singer) return estimate(*model, vowel, singer, pool, steps);
    auto out = *model;
    out.vowel = vowel.quality();
    out.estimated = true;
    out.origin = worded("taken as the nearest known vowel, {0}", model->vowel.ipa());
    for (auto* r : {&out.r1, &out.r2})
        r->sd = r->centre * std::hypot(r->sd / r->centre, deviation_per_step * steps);
    return out;
}

} // namespace vowelway::plan
