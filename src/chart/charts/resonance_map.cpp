// SPDX-License-Identifier: MIT
// The resonance map: the plane of fR1 (down the page, as vowels open) and fR2 (leftwards, as they go to the
// front), the singer's vowels with their uncertainty, and the harmonics of one pitch through it.
#include "chart/canvas/label_placer.hpp"
#include "chart/charts/charts.hpp"
#include "chart/page/legend.hpp"
#include "chart/page/resonance_plane.hpp"
#include "chart/page/title.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace vowelway::chart {
namespace {

constexpr std::string_view sentence_of_map = to_word(
    "Each vowel lies where its two lowest resonances are, in an ellipse of one standard deviation: open "
    "vowels below, "
    "front vowels at the left. The lines are the harmonics of the pitch; arrows show what to change.");

/// The cell of a strip nearest to a pitch.
plan::PitchCell const* cell_at(plan::VowelPlan const& v, Pitch pitch) {
    auto const nearest = ranges::min_element(
        v.strip, {}, [&](plan::PitchCell const& c) { return std::abs((c.pitch - pitch).value); });
    return nearest == v.strip.end() ? nullptr : &*nearest;
}

/// What the map must hold: the vowels, and the targets at this pitch.
std::vector<Spot> spots_of(plan::Plan const& plan, Pitch pitch) {
    std::vector<Spot> spots;
    for (auto const& v : plan.vowels) {
        spots.push_back({v.resonances.r1, v.resonances.r2});
        if (auto const* cell = cell_at(v, pitch); cell && cell->decision.advice == plan::Advice::modify)
            spots.push_back({cell->decision.target.r1, cell->decision.target.r2});
    }
    return spots;
}

void draw_harmonics(Canvas& canvas, Plane const& plane, Pitch pitch, LabelPlacer& labels) {
    auto const& b = plane.box;
    for (int n = 1; n <= 16; ++n) {
        double const hz = n * in_hertz(pitch.frequency());
        Pen const pen{.width = n == 1 ? 1.3 : n == 2 ? 1.0 : 0.55, .color = n <= 2 ? ink::black : ink::rule};
        auto const style = plain(type::small, n <= 2 ? ink::black : ink::soft);
        auto const name = Harmonic{n}.str();
        auto const extent = canvas.measurer().measure(name, style);
        auto const label = [&](Box const& wish) {
            if (auto const spot = labels.find(wish, 0))
                canvas.text({spot->left - extent.left, spot->top + extent.above}, name, style);
        };
        if (hz > plane.r1_low && hz < plane.r1_high) {
            double const y = plane.y(hz);
            canvas.line({b.left, y}, {b.right(), y}, pen);
            label({b.left + 4, y - 2.5 - extent.above - extent.below, extent.right - extent.left,
                   extent.above + extent.below});
        }
        if (hz > plane.r2_low && hz < plane.r2_high) {
            double const x = plane.x(hz);
            canvas.line({x, b.top}, {x, b.bottom()},
                        {.width = pen.width, .color = pen.color, .dashes = {3, 2}});
            label({x + 2.5, b.bottom() - 5 - extent.above - extent.below, extent.right - extent.left,
                   extent.above + extent.below});
        }
    }
}

/// Where the reach of gestures from a vowel ends within the plane: its front side, its back side, and the
/// widest opening.
Path limits_of(plan::VowelPlan const& v, Plane const& plane) {
    Path path;
    bool drawing = false;
    auto const go = [&](Frequency r1, Frequency r2, bool limit) {
        double const x = plane.x(in_hertz(r2)), y = plane.y(in_hertz(r1));
        bool const inside =
            x >= plane.box.left && x <= plane.box.right() && y >= plane.box.top && y <= plane.box.bottom();
        if (limit && inside) drawing ? path.line({x, y}) : path.move({x, y});
        drawing = limit && inside;
    };
    for (auto const& row : v.reach) go(row.r1, row.r2_high, row.high_is_limit);
    if (!v.reach.empty() && v.reach.back().r1_is_limit) go(v.reach.back().r1, v.reach.back().r2_low, true);
    drawing = false;
    for (auto const& row : v.reach) go(row.r1, row.r2_low, row.low_is_limit);
    return path;
}

bool modified(plan::VowelPlan const& v, Pitch pitch) {
    auto const* cell = cell_at(v, pitch);
    return cell && cell->decision.advice == plan::Advice::modify;
}

bool reach_shown(plan::Plan const& plan, Pitch pitch) {
    return ranges::any_of(plan.vowels,
                          [&](plan::VowelPlan const& v) { return modified(v, pitch) && !v.reach.empty(); });
}

double draw_legend(Canvas& canvas, plan::Plan const& plan, bool with_reach, double width) {
    Legend legend(canvas, 9, width, 14);
    auto const line = [&](Pen const& pen, std::string_view text) {
        legend.entry(16, text, [&](double x, double y) { canvas.line({x, y - 3}, {x + 16, y - 3}, pen); });
    };
    line({.width = 1.3, .color = ink::black}, worded("harmonic at fR1"));
    line({.width = 0.8, .color = ink::black, .dashes = {3, 2}}, worded("harmonic at fR2"));
    legend.entry(18, worded("modify: from the vowel's own shape to the target"), [&](double x, double y) {
        draw_arrow(canvas, {x, y - 3}, {x + 18, y - 3});
    });
    if (with_reach)
        line({.width = 0.7, .color = ink::modify, .dashes = {0.7, 2.2}},
             worded("limit of reach, by the model"));
    bool const estimated =
        ranges::any_of(plan.vowels, [](plan::VowelPlan const& v) { return v.resonances.estimated; });
    if (estimated)
        legend.entry(12, worded("estimated, not measured"), [&](double x, double y) {
            canvas.stroke(Path().circle({x + 6, y - 3}, 5),
                          {.width = 0.8, .color = ink::first, .dashes = {2, 1.5}});
        });
    return legend.y() + 3;
}

struct Name {
    Box box;
    std::string text;
    TextStyle style;
};

/// The vowels' names are placed first, so that nothing takes their room.
std::vector<Name> place_names(plan::Plan const& plan, Plane const& plane, LabelPlacer& labels,
                              TextMeasurer const& measurer) {
    std::vector<Name> names;
    for (auto const& v : plan.vowels) {
        auto const centre = plane.at({v.resonances.r1, v.resonances.r2});
        auto const style = bold(16);
        auto const text = v.resonances.vowel.quality().ipa();
        auto const e = measurer.measure(text, style);
        auto const round = ellipse(plane, {v.resonances.r1, v.resonances.r2}).bounds();
        Box const wish{round.right() + 3, centre.y - (e.above + e.below) / 2, e.right - e.left,
                       e.above + e.below};
        if (auto const spot = labels.find(wish, 60)) names.push_back({*spot, text, style});
    }
    return names;
}

void draw_ellipse(Canvas& canvas, plan::VowelPlan const& v, Plane const& plane) {
    auto const path = ellipse(plane, {v.resonances.r1, v.resonances.r2});
    canvas.fill(path, ink::white);
    canvas.stroke(path,
                  {.width = 0.8,
                   .color = ink::first,
                   .dashes = v.resonances.estimated ? std::vector<double>{2, 1.5} : std::vector<double>{}});
}

/// The middle of a vowel, and where it is to go at this pitch.
void draw_aim(Canvas& canvas, plan::VowelPlan const& v, Pitch pitch, Plane const& plane,
              LabelPlacer& labels) {
    auto const centre = plane.at({v.resonances.r1, v.resonances.r2});
    canvas.fill(Path().circle(centre, 2.2), ink::black);
    if (!modified(v, pitch)) return;
    auto const& target = cell_at(v, pitch)->decision.target;
    auto const aim = plane.at({target.r1, target.r2});
    draw_arrow(canvas, centre, aim);
    auto const style = bold(11, ink::modify);
    auto const text = target.shade.quality().ipa();
    auto const e = canvas.measurer().measure(text, style);
    Box const wish{aim.x + 4, aim.y + 3, e.right - e.left, e.above + e.below};
    if (auto const spot = labels.find(wish, 20))
        canvas.text({spot->left - e.left, spot->top + e.above}, text, style);
}

void draw_vowels(Canvas& canvas, plan::Plan const& plan, Pitch pitch, Plane const& plane) {
    LabelPlacer labels({plane.box.left + 1, plane.box.top + 1, plane.box.width - 2, plane.box.height - 2});
    auto const names = place_names(plan, plane, labels, canvas.measurer());
    for (auto const& v : plan.vowels) draw_ellipse(canvas, v, plane);
    for (auto const& v : plan.vowels)
        if (modified(v, pitch))
            canvas.stroke(limits_of(v, plane), {.width = 0.7, .color = ink::modify, .dashes = {0.7, 2.2}});
    draw_harmonics(canvas, plane, pitch, labels);
    for (auto const& v : plan.vowels) draw_aim(canvas, v, pitch, plane, labels);
    for (auto const& name : names) {
        auto const e = canvas.measurer().measure(name.text, name.style);
        canvas.text({name.box.left - e.left, name.box.top + e.above}, name.text, name.style);
    }
}

} // namespace

std::vector<Page> resonance_map(plan::Plan const& plan, Pitch pitch, Size paper,
                                TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side;
    auto const& tuning = plan.passage.tuning;
    Page page{paper, Drawing(measurer)};
    auto& canvas = page.drawing;
    auto title = head_of(plan, reworded(sentence_of_map));
    title.aside = worded("sung on {0}", tuning.name(pitch).str());
    draw_margins(canvas, title, worded("resonance map"), paper, 1, 1);
    Drawing head(measurer);
    double const used = draw_title(head, title, width);
    head.replay(canvas, {margin_side, margin_top});

    Drawing under(measurer);
    double const legend_height = draw_legend(under, plan, reach_shown(plan, pitch), width);
    double const top = margin_top + used + 24, bottom = paper.height - margin_bottom - legend_height - 40;
    under.replay(canvas, {margin_side, bottom + 31});
    auto const plane = plane_around(spots_of(plan, pitch), {margin_side + 26, top, width - 52, bottom - top});
    draw_axes(canvas, plane, tuning);
    draw_vowels(canvas, plan, pitch, plane);

    std::vector<Page> result;
    result.push_back(std::move(page));
    return result;
}

} // namespace vowelway::chart
