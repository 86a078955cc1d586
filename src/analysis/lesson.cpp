// SPDX-License-Identifier: MIT
#include "vowelway/analysis/lesson.hpp"

#include "analysis/median.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <optional>

namespace vowelway::analysis {
namespace {

using Kind = LessonPoint::Kind;
constexpr double clear = 2;                                                 // deviations
constexpr double least_common = 0.02, least_back = 0.03, least_wide = 0.05; // of F; of the distance
constexpr double jaw = 1.5; // times the fall of F2: what F1 rises by when the jaw opens is more
constexpr std::size_t fewest_vowels = 2;
constexpr double of_a_day = 0.015; // ln F by which a vowel repeats on another day (our judgement)

/// A mean with its deviation; the scatter beyond what the deviations explain makes it wider.
struct Mean {
    double value = 0, sd = 0;
    std::size_t count = 0;
    bool above(double least) const { return count >= fewest_vowels && value > clear * sd && value > least; }
    bool below(double least) const { return count >= fewest_vowels && -value > clear * sd && -value > least; }
};

struct Value {
    double value, sd;
};

Mean mean_of(std::vector<Value> const& all) {
    Mean m;
    double weights = 0, sum = 0;
    for (auto const& v : all) weights += 1 / (v.sd * v.sd), sum += v.value / (v.sd * v.sd);
    m.count = all.size();
    if (all.empty()) return m;
    m.value = sum / weights;
    double scatter = 0;
    for (auto const& v : all) scatter += std::pow((v.value - m.value) / v.sd, 2);
    double const more = all.size() > 1 ? std::max(1.0, scatter / static_cast<double>(all.size() - 1)) : 1;
    m.sd = std::sqrt(more / weights);
    return m;
}

/// One vowel now and before, ln F.
struct Moved {
    std::array<std::optional<Value>, 3> by, now, before;
};

std::vector<Moved> moved(std::vector<Checked> const& checked) {
    std::vector<Moved> all;
    for (auto const& c : checked) {
        if (c.against != Checked::Against::profile) continue;
        Moved m;
        for (std::size_t k = 0; k < 3; ++k)
            if (auto const& d = c.comparison.resonances[k]; d && d->same_probe) {
                double const now = d->found_sd / d->found, was = d->aim_sd / d->aim;
                m.now[k] = Value{std::log(in_hertz(d->found)), now};
                m.before[k] = Value{std::log(in_hertz(d->aim)), was};
                m.by[k] = Value{m.now[k]->value - m.before[k]->value, std::hypot(now, of_a_day)};
            }
        if (m.by[0] && m.by[1]) all.push_back(m);
    }
    return all;
}

Mean mean_move(std::vector<Moved> const& all, std::size_t k) {
    std::vector<Value> values;
    for (auto const& m : all)
        if (m.by[k]) values.push_back(*m.by[k]);
    return mean_of(values);
}

std::string whole(double value) {
    char made[40];
    std::snprintf(made, sizeof made, "%.0f", value);
    return made;
}

void add_common(std::vector<LessonPoint>& points, std::array<Mean, 3> const& by) {
    std::vector<Value> three;
    for (auto const& m : by)
        if (m.count >= fewest_vowels) three.push_back({m.value, std::max(m.sd, 1e-4)});
    if (three.size() < 3) return; // the third tells a shorter tract from a moved tongue
    double const least = std::min({by[0].value, by[1].value, by[2].value}),
                 most = std::max({by[0].value, by[1].value, by[2].value});
    auto const common = mean_of(three);
    double const per_cent = 100 * (std::exp(common.value) - 1), sd = 100 * common.sd;
    if (least > 0 && common.above(least_common))
        points.push_back(
            {Kind::all_higher, per_cent, sd,
             worded("all resonances lie higher than last time, by {0} ± {1} %: the larynx is high, the lips "
                    "are spread, or the noise is too far in front",
                    whole(per_cent), whole(sd)),
             worded("let the larynx rest low and the lips loose, and make the noise farther back")});
    if (most < 0 && common.below(least_common))
        points.push_back({Kind::all_lower, per_cent, sd,
                          worded("all resonances lie lower than last time, by {0} ± {1} %: the larynx is "
                                 "lower or the lips are rounder",
                                 whole(-per_cent), whole(sd)),
                          ""});
}

void add_tongue(std::vector<LessonPoint>& points, std::array<Mean, 3> const& by) {
    // The second against what the first and third do: a lower larynx takes all of them along.
    double const others = by[2].count >= fewest_vowels ? 0.5 * (by[0].value + by[2].value) : 0;
    Mean back = by[1];
    back.value -= std::min(others, 0.0);
    // An open jaw lowers the second too, but raises the first by far more.
    if (!back.below(least_back) || by[1].value > -least_back || by[0].value > -jaw * by[1].value) return;
    double const per_cent = 100 * (1 - std::exp(by[1].value)), sd = 100 * by[1].sd;
    points.push_back(
        {Kind::tongue_back, -per_cent, sd,
         worded("the second resonance lies lower than last time, by {0} ± {1} %: the tongue is drawn back",
                whole(per_cent), whole(sd)),
         worded("let the tongue lie forward, its tip at the lower teeth")});
}

/// Mean squared distance of the vowels from their own centre, F1 and F2 in ln, with its deviation.
Value width_of(std::vector<Moved> const& all, bool now) {
    double sum = 0, variance = 0;
    for (std::size_t k = 0; k < 2; ++k) {
        double centre = 0;
        for (auto const& m : all)
            centre += (now ? m.now : m.before)[k]->value / static_cast<double>(all.size());
        for (auto const& m : all) {
            auto const& v = *(now ? m.now : m.before)[k];
            double const away = v.value - centre, sd = std::hypot(v.sd, of_a_day / std::sqrt(2.0));
            sum += away * away;
            variance += std::pow(2 * away * sd, 2);
        }
    }
    return {sum, std::sqrt(variance)};
}

void add_width(std::vector<LessonPoint>& points, std::vector<Moved> const& all) {
    if (all.size() < 3) return;
    auto const now = width_of(all, true), before = width_of(all, false);
    if (now.value <= 0 || before.value <= 0) return;
    double const ratio = 0.5 * std::log(now.value / before.value),
                 sd = 0.5 * std::hypot(now.sd / now.value, before.sd / before.value);
    if (std::abs(ratio) <= clear * sd || std::abs(ratio) <= least_wide) return;
    double const per_cent = 100 * (std::exp(ratio) - 1);
    if (ratio > 0)
        points.push_back(
            {Kind::wider_apart, per_cent, 100 * sd,
             worded("the vowels lie farther apart than last time, by {0} ± {1} %: over-articulated",
                    whole(per_cent), whole(100 * sd)),
             worded("move jaw, lips and tongue no more than the vowel needs")});
    else
        points.push_back({Kind::nearer, per_cent, 100 * sd,
                          worded("the vowels lie closer together than last time, by {0} ± {1} %: the mouth "
                                 "moves less for them",
                                 whole(-per_cent), whole(100 * sd)),
                          ""});
}

/// Most whispers lack what a tract shut behind their noise takes up.
bool add_place_of_noise(std::vector<LessonPoint>& points, Measurements const& m) {
    int whispers = 0, in_front = 0;
    for (auto const& t : m.takes)
        if (t.usable() && t.excitation.kind == ProbeKind::whisper)
            ++whispers, in_front += t.measured.noise_in_front;
    if (whispers < static_cast<int>(fewest_vowels) || 2 * in_front <= whispers) return false;
    points.push_back({Kind::noise_in_front, static_cast<double>(in_front) / whispers, 0,
                      worded("the noise of {0} of {1} whispers is made too far in front, at tongue, teeth or "
                             "lips",
                             in_front, whispers),
                      worded("make the noise low in the throat, with the mouth open as for the vowel")});
    return true;
}

void add_noise(std::vector<LessonPoint>& points, Measurements const& m) {
    if (add_place_of_noise(points, m)) return;
    std::vector<Value> all;
    for (auto const& t : m.takes)
        if (t.usable() && t.quality.source_balance && !t.measured.noise_in_front)
            all.push_back({t.quality.source_balance->value - ordinary_balance.mean, ordinary_balance.sd});
    if (all.size() < fewest_vowels) return;
    auto const mean = mean_of(all);
    double const sd = std::hypot(mean.sd, ordinary_balance.sd / 2); // one mouth is not all mouths
    if (mean.value > clear * sd)
        points.push_back(
            {Kind::dull_noise, mean.value, sd,
             worded("the noise of the whisper is dull, {0} ± {1} dB short of height: it is made too far back",
                    whole(mean.value), whole(sd)),
             worded("let the tongue lie forward and the breath flow more lightly")});
    if (mean.value < -clear * sd)
        points.push_back({Kind::thin_noise, mean.value, sd,
                          worded("the noise of the whisper is thin, {0} ± {1} dB short of depth: it is made "
                                 "too far in front, at tongue, teeth or lips",
                                 whole(-mean.value), whole(sd)),
                          worded("make the noise low in the throat, with the mouth open as for the vowel")});
}

void add_repeats(std::vector<LessonPoint>& points, Measurements const& m) {
    std::vector<double> spreads;
    for (auto const& v : m.vowels)
        for (std::size_t k = 0; k < 2; ++k)
            if (v.repeat_spread[k]) spreads.push_back(v.repeat_spread[k]->value);
    if (spreads.empty()) return;
    double const cents = upper_median(std::move(spreads));
    bool const good = cents <= repeats_within.value;
    points.push_back({Kind::repeats, cents, 0,
                      good ? worded("repeats agree within {0} cents", whole(cents))
                           : worded("repeats differ by {0} cents", whole(cents)),
                      good ? std::string() : worded("repeat each vowel until it comes out the same")});
}

} // namespace

std::string_view to_string(LessonPoint::Kind kind) {
    static constexpr std::array names{"all higher", "all lower",      "tongue back", "dull noise",
                                      "thin noise", "noise in front", "wider apart", "nearer",
                                      "repeats",    "as last time",   "no reference"};
    return names.at(static_cast<std::size_t>(kind));
}

std::vector<LessonPoint> lesson_points(Measurements const& m, std::vector<Checked> const& checked) {
    std::vector<LessonPoint> points;
    auto const all = moved(checked);
    if (all.size() >= fewest_vowels) {
        std::array<Mean, 3> const by{mean_move(all, 0), mean_move(all, 1), mean_move(all, 2)};
        add_common(points, by);
        add_tongue(points, by);
        add_width(points, all);
    }
    add_noise(points, m);
    if (points.empty() && !all.empty()) {
        std::vector<double> cents;
        for (auto const& one : all)
            for (std::size_t k = 0; k < 2; ++k)
                cents.push_back(1200 / std::log(2.0) * std::abs(one.by[k]->value));
        double const usual = upper_median(std::move(cents));
        points.push_back(
            {Kind::as_last_time, usual, 0, worded("as last time, within {0} cents", whole(usual)), ""});
    }
    if (all.empty() && !checked.empty())
        points.push_back({Kind::no_reference, 0, 0,
                          worded("there is no earlier probe of this kind to compare with; the profile's "
                                 "resonances tell less"),
                          worded("measure a good session of this kind into the profile first")});
    add_repeats(points, m);
    return points;
}

} // namespace vowelway::analysis
