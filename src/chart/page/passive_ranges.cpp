// SPDX-License-Identifier: MIT
#include "chart/page/passive_ranges.hpp"

#include "chart/page/marks.hpp"
#include "chart/page/text.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace vowelway::chart {
namespace {

/// The range of the plan from left to right, logarithmic.
struct Axis {
    double low, high; // hertz
    double from, to;  // x
    double at(Pitch p) const {
        double const t = std::log(p.frequency().value() / low) / std::max(1e-9, std::log(high / low));
        return from + std::clamp(t, 0.0, 1.0) * (to - from);
    }
};

/// Grey where the vowel stays, hatched where it migrates, whiskers where it ends; the row ends at `y`.
void draw_range(Canvas& canvas, Axis const& axis, plan::PassiveRange const& range, double y) {
    double const from = axis.at(range.from), to = std::max(axis.at(range.to), from + 1);
    double const drift = range.migrates_from ? std::clamp(axis.at(*range.migrates_from), from, to) : to;
    canvas.fill(Box{from, y - 6, drift - from, 4}, ink::soft);
    if (to > drift) {
        Box const box{drift, y - 6, to - drift, 4};
        canvas.stroke(Path().rectangle(box), {.width = 0.5, .color = ink::migrate});
        hatch(canvas, box, 1.8, {.width = 0.6, .color = ink::migrate});
    }
    if (range.reaches_top) return;
    double const left = axis.at(range.to - range.to_sd), right = axis.at(range.to + range.to_sd);
    canvas.line({left, y - 4}, {right, y - 4}, {.width = 0.8, .color = ink::black});
    for (double const end : {left, right})
        canvas.line({end, y - 6.5}, {end, y - 1.5}, {.width = 0.8, .color = ink::black});
}

std::string words_of(plan::PassiveRange const& range, Tuning const& tuning) {
    if (range.reaches_top) return worded("all of it");
    return tuning.name(range.to).pitch.str() +
           fmt::format(" ±{:.0f}", std::max(1.0, std::round(in_semitones(range.to_sd))));
}

} // namespace

double draw_passive_ranges(Canvas& canvas, plan::Plan const& plan, std::span<plan::VowelPlan const> vowels,
                           double x, double y, double width) {
    auto const& tuning = plan.passage.tuning;
    Axis const axis{.low = tuning.pitch(plan.range.low).frequency().value(),
                    .high = tuning.pitch(plan.range.high).frequency().value(),
                    .from = x + 23,
                    .to = x + width - 47};
    double const row = vowels.size() > 9 ? 11 : 13.5;
    for (auto const& v : vowels) {
        y += row;
        canvas.write({x + 1, y - 1.5}, slashed(v.resonances.vowel), plain(type::body));
        canvas.line({axis.from, y - 4}, {axis.to, y - 4},
                    {.width = 0.5, .color = ink::rule, .dashes = {0.8, 1.6}});
        if (!v.passive_range) {
            canvas.write({x + width, y - 1.5}, worded("modify throughout"), plain(type::small, ink::modify),
                         Align::right);
            continue;
        }
        draw_range(canvas, axis, *v.passive_range, y);
        canvas.write({x + width, y - 1.5}, words_of(*v.passive_range, tuning), plain(type::label),
                     Align::right);
    }
    y += 10;
    canvas.write({axis.from, y}, plan.range.low.str(), plain(type::small, ink::soft));
    canvas.write({axis.to, y}, plan.range.high.str(), plain(type::small, ink::soft), Align::right);
    canvas.write({x + width, y}, worded("± semitones"), plain(type::small, ink::soft), Align::right);
    return y + 4;
}

} // namespace vowelway::chart
