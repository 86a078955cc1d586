// SPDX-License-Identifier: MIT
// The pitch-by-vowel plan: pitch upwards, a strip for each vowel from front to back. Passes: measure the
// head and the foot -> assign strips to pages and rows to semitones -> draw strips -> place labels.
#include "chart/charts/charts.hpp"
#include "chart/charts/pitch_by_vowel/strip.hpp"
#include "chart/page/legend.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/text.hpp"
#include "chart/page/title.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::chart {
namespace {

constexpr std::string_view sentence_of_pitches =
    to_word("Each strip is a vowel, pitch goes upwards: its texture says where the "
            "sung note lies against the vowel's first "
            "resonance, the letters what a listener will hear, the rim what to do, "
            "the bars how long the song stays there.");
constexpr std::size_t most_strips = 12;
constexpr double most_strip = 78, least_strip = 32;

/// Time sung at each pitch: longest bar of the plan, for scale.
double longest(plan::Plan const& plan) {
    double most = 0;
    for (auto const& v : plan.vowels)
        for (auto const& cell : v.strip) most = std::max(most, in_seconds(cell.sung));
    return most;
}

void legend_of_zones(Canvas& canvas, Legend& legend) {
    auto const zone = [&](plan::Zone z, double p, std::string_view text) {
        legend.entry(18, text, [&](double at, double line) {
            Box const box{at, line - 8, 18, 10};
            fill_zone(canvas, box, {z, p, 0});
            canvas.stroke(Path().rectangle(box), {.width = 0.6, .color = ink::soft});
        });
    };
    zone(plan::Zone::open, 0, worded("open: 2fo below fR1"));
    zone(plan::Zone::turning, 0.6, worded("turning: 2fo passes fR1"));
    zone(plan::Zone::close, 1, worded("close: 2fo above"));
    zone(plan::Zone::meeting, 1, worded("meeting: fo at fR1"));
    zone(plan::Zone::above, 1, worded("fo above fR1"));
}

void legend_of_crossings(Canvas& canvas, Legend& legend) {
    auto const tick = [&](Pen const& pen, std::string_view text) {
        legend.entry(6, text, [&](double at, double line) {
            canvas.line({at + 3, line - 9}, {at + 3, line + 2}, pen);
            for (double const end : {line - 9, line + 2})
                canvas.line({at + 1, end}, {at + 5, end}, {.width = 0.8, .color = pen.color});
        });
    };
    tick({.width = 1.2, .color = ink::first}, worded("crossing with fR1, as tall as its uncertainty"));
    tick({.width = 1, .color = ink::second, .dashes = {2, 1.2}}, worded("with fR2"));
}

double draw_legend(Canvas& canvas, double y, double width, double most, bool estimated) {
    Legend legend(canvas, y + 10, width, 13, 14);
    legend_of_zones(canvas, legend);
    legend_of_crossings(canvas, legend);
    if (most > 0)
        legend.entry(18, worded("time sung; the longest bar is {0} s", fmt::format("{:.1f}", most)),
                     [&](double at, double line) {
                         canvas.fill(Box{at, line - 5.5, 18, 5}, ink::black);
                     });
    if (estimated)
        legend.entry(14, worded("estimated, not measured"), [&](double at, double line) {
            canvas.write({at, line}, worded("est."), slanted(type::small, ink::soft));
        });
    for (auto const advice : {plan::Advice::hold, plan::Advice::migrate, plan::Advice::modify})
        legend.entry(rim, worded("rim: {0}", meaning(advice)), [&](double at, double line) {
            draw_rim_of(canvas, {at, line - 8, rim, 10}, advice);
        });
    return legend.y() + 6;
}

/// The vowel over the strip; under it whether it is estimated.
void name_strip(Canvas& canvas, Strip const& strip, double above, double below) {
    double const middle = strip.left + strip.width / 2;
    canvas.write({middle, above}, slashed(strip.vowel->resonances.vowel), bold(15), Align::centre);
    if (strip.vowel->resonances.estimated)
        canvas.write({middle, below}, worded("est."), slanted(type::small, ink::soft), Align::centre);
}

} // namespace

std::vector<Page> pitch_by_vowel(plan::Plan const& plan, Size paper, TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side, most = longest(plan);
    double const room = width - PitchAxis::room_left - PitchAxis::room_right;
    auto const at_most =
        std::clamp(static_cast<std::size_t>(room / least_strip), std::size_t{1}, most_strips);
    std::size_t const strips = plan.vowels.size(), pages = (strips + at_most - 1) / at_most;
    std::size_t const per_page = (strips + pages - 1) / pages;

    auto const title = head_of(plan, reworded(sentence_of_pitches));
    std::vector<Page> result;
    for (std::size_t p = 0; p < pages; ++p) {
        Page page{paper, Drawing(measurer)};
        draw_margins(page.drawing, title, worded("pitch-by-vowel plan"), paper, p + 1, pages);
        Drawing head(measurer);
        double const head_height = p == 0 ? draw_title(head, title, width) : 0;
        Drawing legend(measurer);
        double const legend_height = draw_legend(
            legend, 0, width, most,
            ranges::any_of(plan.vowels, [](plan::VowelPlan const& v) { return v.resonances.estimated; }));
        head.replay(page.drawing, {margin_side, margin_top});

        double const names = margin_top + head_height + 16; // baseline of the vowels' names
        double const bottom = paper.height - margin_bottom - 12 - legend_height;
        legend.replay(page.drawing, {margin_side, bottom + 12});
        PitchAxis axis{plan.passage.tuning, std::round(plan.range.low.key_number()),
                       std::round(plan.range.high.key_number()), names + 8, bottom};
        double const left = margin_side + PitchAxis::room_left,
                     right = paper.width - margin_side - PitchAxis::room_right;
        std::size_t const from = p * per_page, to = std::min(strips, from + per_page);
        double const pitch = std::min(most_strip, (right - left) / static_cast<double>(per_page));
        double const end = left + pitch * static_cast<double>(to - from);
        axis.draw(page.drawing, left, end);
        page.drawing.write({end + 2, names}, "Hz", plain(type::small, ink::soft));
        for (std::size_t i = from; i < to; ++i) {
            Strip const strip{&plan.vowels[i], left + 2 + pitch * static_cast<double>(i - from),
                              pitch - (pitch < 50 ? 3 : 5)};
            draw_strip(page.drawing, strip, axis, most);
            name_strip(page.drawing, strip, names, axis.bottom + 8.5);
        }
        result.push_back(std::move(page));
    }
    return result;
}

} // namespace vowelway::chart
