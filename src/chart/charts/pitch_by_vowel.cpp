// SPDX-License-Identifier: MIT
// The pitch-by-vowel plan: pitch upwards, a strip for each vowel from front to back. Passes: measure the
// head and the foot -> assign strips to pages and rows to semitones -> draw strips -> place labels.
#include "chart/canvas/label_placer.hpp"
#include "chart/charts/charts.hpp"
#include "chart/page/front.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/pitch_axis.hpp"
#include "core/ranges.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::chart {
namespace {

constexpr std::string_view sentence = "Each strip is a vowel, pitch goes upwards: its texture says where the "
                                      "sung note lies against the vowel's first "
                                      "resonance, the letters what a listener will hear, the rim what to do, "
                                      "the bars how long the song stays there.";
constexpr std::size_t most_strips = 12;
constexpr double rim = 5, most_strip = 78, least_strip = 32;
constexpr int most_harmonics = 5; // crossings of higher ones crowd, and say little

/// Time sung at each pitch: longest bar of the plan, for scale.
double longest(plan::Plan const& plan) {
    double most = 0;
    for (auto const& v : plan.vowels)
        for (auto const& cell : v.strip) most = std::max(most, in_seconds(cell.sung));
    return most;
}

struct Strip {
    plan::VowelPlan const* vowel = nullptr;
    double left = 0, width = 0;
    bool narrow() const { return width < 46; }
    double rim_width() const { return narrow() ? 4 : rim; }
    double body_left() const { return left + rim_width() + 1.2; }
    double body_right() const { return left + width - heard_width() - 1; }
    double heard_width() const { return narrow() ? 11 : 12.5; }
    double heard_x() const { return left + width - heard_width() / 2; }
};

void draw_zones(Canvas& canvas, Strip const& s, PitchAxis const& axis) {
    double const half = axis.row() / 2;
    auto const& cells = s.vowel->strip;
    for (std::size_t i = 0; i < cells.size();) {
        // Neighbours of one texture are drawn as one; the stipple changes with its density.
        auto const& first = cells[i].decision.zone;
        std::size_t j = i + 1;
        while (j < cells.size() && cells[j].decision.zone.zone == first.zone &&
               first.zone != plan::Zone::turning)
            ++j;
        double const top = axis.y(cells[j - 1].pitch) - half, bottom = axis.y(cells[i].pitch) + half;
        fill_zone(canvas, {s.body_left(), top, s.body_right() - s.body_left(), bottom - top}, first);
        i = j;
    }
    // Rim: what to do.
    for (std::size_t i = 0; i < cells.size();) {
        auto const advice = cells[i].decision.advice;
        std::size_t j = i + 1;
        while (j < cells.size() && cells[j].decision.advice == advice) ++j;
        double const top = axis.y(cells[j - 1].pitch) - half, bottom = axis.y(cells[i].pitch) + half;
        Box const box{s.left, top, s.rim_width(), bottom - top};
        if (advice == plan::Advice::modify) canvas.fill(box, ink::modify);
        if (advice == plan::Advice::migrate) {
            canvas.fill(box, ink::migrate_wash);
            hatch(canvas, box, 2.2, {.width = 0.8, .color = ink::migrate});
        }
        canvas.stroke(Path().rectangle(box), {.width = 0.5, .color = color_of(advice)});
        i = j;
    }
    canvas.stroke(
        Path().rectangle({s.body_left(), axis.top, s.body_right() - s.body_left(), axis.bottom - axis.top}),
        {.width = 0.6, .color = ink::soft});
}

double sung_length(Strip const& s, plan::PitchCell const& cell, double most) {
    if (in_seconds(cell.sung) <= 0 || most <= 0) return 0;
    return std::max(2.0, in_seconds(cell.sung) / most * (s.body_right() - s.body_left() - 2));
}

void draw_sung(Canvas& canvas, Strip const& s, PitchAxis const& axis, double most) {
    double const thick = std::clamp(axis.row() * 0.42, 3.0, 6.5);
    for (auto const& cell : s.vowel->strip) {
        double const length = sung_length(s, cell, most), y = axis.y(cell.pitch);
        if (length <= 0) continue;
        canvas.fill(Box{s.body_left() - 0.5, y - thick / 2 - 1, length + 1.5, thick + 2}, ink::white);
        canvas.fill(Box{s.body_left(), y - thick / 2, length, thick}, ink::black);
    }
}

/// Letters up the strip, wherever the heard vowel changes; the intended one stands at its foot.
void draw_heard(Canvas& canvas, Strip const& s, PitchAxis const& axis) {
    auto const& cells = s.vowel->strip;
    double const least = 11; // between two letters
    double last_y = 1e9;
    for (std::size_t i = 0; i < cells.size();) {
        auto const heard = cells[i].decision.heard.vowel.quality();
        std::size_t j = i + 1;
        while (j < cells.size() && cells[j].decision.heard.vowel.quality() == heard) ++j;
        double const bottom = axis.y(cells[i].pitch) + axis.row() / 2,
                     top = axis.y(cells[j - 1].pitch) - axis.row() / 2;
        bool const own = heard == s.vowel->resonances.vowel.quality();
        double const y = std::min((top + bottom) / 2 + 3, last_y - least);
        if (y > top + 5) {
            canvas.write({s.heard_x(), y}, heard.ipa(),
                         own ? plain(type::body, ink::soft) : bold(type::body, ink::migrate), Align::centre);
            last_y = y;
        }
        if (i > 0)
            canvas.line({s.heard_x() - 4, bottom}, {s.heard_x() + 4, bottom},
                        {.width = 0.5, .color = ink::rule});
        i = j;
    }
}

int rank(plan::Crossing const& c) {
    if (c.resonance.number == 1) return c.harmonic.number <= 2 ? 0 : c.harmonic.number;
    return 2 + c.harmonic.number + c.resonance.number * 2;
}

/// Ticks as long as the uncertainty; names where there is room, the weightiest first.
void draw_crossings(Canvas& canvas, Strip const& s, PitchAxis const& axis, double most) {
    std::vector<plan::Crossing const*> order;
    for (auto const& c : s.vowel->crossings)
        if (c.harmonic.number <= most_harmonics && c.resonance.number <= 2) order.push_back(&c);
    ranges::stable_sort(order, {}, [](plan::Crossing const* c) { return rank(*c); });
    LabelPlacer placer(
        {s.body_left() + 0.6, axis.top + 1, s.body_right() - s.body_left() - 1, axis.bottom - axis.top - 2});
    for (auto const& cell : s.vowel->strip) // the bars of the time sung stay readable
        if (double const length = sung_length(s, cell, most); length > 0)
            placer.block({s.body_left(), axis.y(cell.pitch) - 3, length, 6});
    double const x = s.body_right() - 3; // of the tick's left end
    for (auto const* c : order) {
        bool const weighty = rank(*c) == 0, first = c->resonance.number == 1;
        auto const color = first ? ink::first : ink::second;
        double const y = axis.y(c->pitch), top = axis.clamped(c->pitch + c->sd),
                     bottom = axis.clamped(c->pitch - c->sd);
        Pen const pen{.width = weighty ? 1.3 : 0.8,
                      .color = color,
                      .dashes = first ? std::vector<double>{} : std::vector<double>{2, 1.2}};
        canvas.line({x + 1.2, top}, {x + 1.2, bottom}, {.width = pen.width + 1.6, .color = ink::white});
        canvas.line({x + 1.2, top}, {x + 1.2, bottom}, pen);
        for (double const end : {top, bottom})
            canvas.line({x - 0.4, end}, {x + 2.8, end}, {.width = 0.8, .color = color});
        if (weighty) canvas.line({s.body_left(), y}, {s.body_right(), y}, {.width = 1.1, .color = color});
        auto const name = c->harmonic.str() + "=" + c->resonance.str();
        double const room = s.body_right() - s.body_left() - 5;
        auto const normal = plain(type::small, color), strong = bold(type::small, color);
        auto const fits = [&](std::string const& text, TextStyle const& style) {
            return canvas.measurer().measure(text, style).advance <= room;
        };
        auto const label = fits(name, normal) ? name : c->harmonic.str();
        auto const style = weighty && fits(label, strong) ? strong : normal;
        auto const extent = canvas.measurer().measure(label, style);
        Box const wish{x - 1.2 - extent.right, y - (weighty ? extent.above + 2.4 : extent.above / 2),
                       extent.right - extent.left, extent.above + extent.below};
        if (auto const spot = placer.find(wish, weighty ? 24 : 9)) {
            canvas.fill(Box{spot->left - 1, spot->top - 0.6, spot->width + 2, spot->height + 1.2},
                        ink::white);
            canvas.text({spot->left - extent.left, spot->top + extent.above}, label, style);
        }
    }
}

double draw_legend(Canvas& canvas, double y, double width, double most, bool estimated) {
    auto const style = plain(type::label);
    auto const& m = canvas.measurer();
    double x = 0;
    y += 10;
    auto const item = [&](double sample, std::string_view text, auto&& draw) {
        double const need = sample + 4 + m.measure(text, style).advance;
        if (x > 0 && x + need > width) x = 0, y += 14;
        draw(x, y);
        canvas.write({x + sample + 4, y}, text, style);
        x += need + 13;
    };
    auto const zone = [&](plan::Zone z, double p, std::string_view text) {
        item(18, text, [&](double at, double line) {
            Box const box{at, line - 8, 18, 10};
            fill_zone(canvas, box, {z, p, 0});
            canvas.stroke(Path().rectangle(box), {.width = 0.6, .color = ink::soft});
        });
    };
    zone(plan::Zone::open, 0, "open: 2fo below fR1");
    zone(plan::Zone::turning, 0.6, "turning: 2fo passes fR1");
    zone(plan::Zone::close, 1, "close: 2fo above");
    zone(plan::Zone::meeting, 1, "meeting: fo at fR1");
    zone(plan::Zone::above, 1, "fo above fR1");
    item(6, "crossing with fR1, as tall as its uncertainty", [&](double at, double line) {
        canvas.line({at + 3, line - 9}, {at + 3, line + 2}, {.width = 1.2, .color = ink::first});
        for (double const end : {line - 9, line + 2})
            canvas.line({at + 1, end}, {at + 5, end}, {.width = 0.8, .color = ink::first});
    });
    item(6, "with fR2", [&](double at, double line) {
        canvas.line({at + 3, line - 9}, {at + 3, line + 2},
                    {.width = 1, .color = ink::second, .dashes = {2, 1.2}});
        for (double const end : {line - 9, line + 2})
            canvas.line({at + 1, end}, {at + 5, end}, {.width = 0.8, .color = ink::second});
    });
    if (most > 0)
        item(18, fmt::format("time sung; the longest bar is {:.1f} s", most), [&](double at, double line) {
            canvas.fill(Box{at, line - 5.5, 18, 5}, ink::black);
        });
    if (estimated)
        item(14, "estimated, not measured", [&](double at, double line) {
            canvas.write({at, line}, "est.", slanted(type::small, ink::soft));
        });
    for (auto const advice : {plan::Advice::hold, plan::Advice::migrate, plan::Advice::modify})
        item(rim, fmt::format("rim: {}", meaning(advice)), [&](double at, double line) {
            Box const box{at, line - 8, rim, 10};
            if (advice == plan::Advice::modify) canvas.fill(box, ink::modify);
            if (advice == plan::Advice::migrate) {
                canvas.fill(box, ink::migrate_wash);
                hatch(canvas, box, 2.2, {.width = 0.8, .color = ink::migrate});
            }
            canvas.stroke(Path().rectangle(box), {.width = 0.5, .color = color_of(advice)});
        });
    return y + 6;
}

} // namespace

std::vector<Page> pitch_by_vowel(plan::Plan const& plan, Size paper, TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side, most = longest(plan);
    double const room = width - PitchAxis::room_left - PitchAxis::room_right;
    auto const at_most =
        std::clamp(static_cast<std::size_t>(room / least_strip), std::size_t{1}, most_strips);
    std::size_t const strips = plan.vowels.size(), pages = (strips + at_most - 1) / at_most;
    std::size_t const per_page = (strips + pages - 1) / pages;

    auto const title = head_of(plan, sentence);
    std::vector<Page> result;
    for (std::size_t p = 0; p < pages; ++p) {
        Page page{paper, Drawing(measurer)};
        draw_margins(page.drawing, title, "pitch-by-vowel plan", paper, p + 1, pages);
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
            draw_zones(page.drawing, strip, axis);
            draw_sung(page.drawing, strip, axis, most);
            draw_heard(page.drawing, strip, axis);
            draw_crossings(page.drawing, strip, axis, most);
            page.drawing.write({strip.left + strip.width / 2, names}, slashed(strip.vowel->resonances.vowel),
                               bold(15), Align::centre);
            if (strip.vowel->resonances.estimated)
                page.drawing.write({strip.left + strip.width / 2, axis.bottom + 8.5}, "est.",
                                   slanted(type::small, ink::soft), Align::centre);
        }
        result.push_back(std::move(page));
    }
    return result;
}

} // namespace vowelway::chart
