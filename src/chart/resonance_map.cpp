// SPDX-License-Identifier: MIT
// The resonance map: the plane of fR1 (down the page, as vowels open) and fR2 (leftwards, as they go to the
// front), the singer's vowels with their uncertainty, and the harmonics of one pitch through it.
#include "chart/charts.hpp"
#include "chart/front.hpp"
#include "chart/label_placer.hpp"
#include "chart/marks.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace vowelway::chart {
namespace {

constexpr std::string_view sentence =
    "Each vowel lies where its two lowest resonances are, in an ellipse of one standard deviation: open vowels below, "
    "front vowels at the left. The lines are the harmonics of the pitch; arrows show what to change.";

struct Plane {
    Box box;
    double r1_low = 200, r1_high = 1200, r2_low = 500, r2_high = 3000; ///< hertz
    double x(double r2) const { return box.right() - box.width * std::log(r2 / r2_low) / std::log(r2_high / r2_low); }
    double y(double r1) const { return box.top + box.height * std::log(r1 / r1_low) / std::log(r1_high / r1_low); }
    Point at(Resonance const& r1, Resonance const& r2) const { return {x(in_hertz(r2.centre)), y(in_hertz(r1.centre))}; }
};

/// The cell of a strip nearest to a pitch.
PitchCell const* cell_at(VowelPlan const& v, Pitch pitch) {
    auto const nearest = std::ranges::min_element(v.strip, {}, [&](PitchCell const& c) { return std::abs((c.pitch - pitch).value); });
    return nearest == v.strip.end() ? nullptr : &*nearest;
}

Plane plane_of(Plan const& plan, Pitch pitch, Box box) {
    Plane p{.box = box};
    double r1_low = 1e9, r1_high = 0, r2_low = 1e9, r2_high = 0;
    auto const take = [&](Resonance const& r1, Resonance const& r2) {
        r1_low = std::min(r1_low, in_hertz(r1.centre - r1.sd));
        r1_high = std::max(r1_high, in_hertz(r1.centre + r1.sd));
        r2_low = std::min(r2_low, in_hertz(r2.centre - r2.sd));
        r2_high = std::max(r2_high, in_hertz(r2.centre + r2.sd));
    };
    for (auto const& v : plan.vowels) {
        take(v.resonances.r1, v.resonances.r2);
        if (auto const* cell = cell_at(v, pitch); cell && cell->decision.advice == Advice::modify) take(cell->decision.target.r1, cell->decision.target.r2);
    }
    p.r1_low = std::max(60.0, r1_low) / 1.12;
    p.r1_high = r1_high * 1.12;
    p.r2_low = std::max(120.0, r2_low) / 1.1;
    p.r2_high = r2_high * 1.1;
    return p;
}

/// An ellipse whose half axes are given on each side of the centre, the scale being logarithmic.
Path ellipse(Plane const& plane, Resonance const& r1, Resonance const& r2) {
    double const x0 = plane.x(in_hertz(r2.centre)), y0 = plane.y(in_hertz(r1.centre));
    double const left = x0 - plane.x(in_hertz(r2.centre + r2.sd)), right = plane.x(std::max(20.0, in_hertz(r2.centre - r2.sd))) - x0;
    double const up = y0 - plane.y(std::max(20.0, in_hertz(r1.centre - r1.sd))), down = plane.y(in_hertz(r1.centre + r1.sd)) - y0;
    double const k = 0.5523;
    Path path;
    path.move({x0 + right, y0});
    path.curve({x0 + right, y0 + k * down}, {x0 + k * right, y0 + down}, {x0, y0 + down});
    path.curve({x0 - k * left, y0 + down}, {x0 - left, y0 + k * down}, {x0 - left, y0});
    path.curve({x0 - left, y0 - k * up}, {x0 - k * left, y0 - up}, {x0, y0 - up});
    path.curve({x0 + k * right, y0 - up}, {x0 + right, y0 - k * up}, {x0 + right, y0});
    return path.close();
}

void draw_axes(Canvas& canvas, Plane const& plane, Tuning const& tuning) {
    auto const& b = plane.box;
    canvas.fill(b, ink::wash);
    auto const style = plain(type::small, ink::soft);
    for (double const hz : {100, 150, 200, 250, 300, 350, 400, 450, 500, 600, 700, 800, 1000, 1200, 1500}) {
        if (hz < plane.r1_low || hz > plane.r1_high) continue;
        canvas.line({b.left - 3, plane.y(hz)}, {b.left, plane.y(hz)}, {.width = 0.6, .color = ink::soft});
        canvas.write({b.left - 5, plane.y(hz) + 2.6}, fmt::format("{:.0f}", hz), style, Align::right);
    }
    for (double const hz : {300, 400, 500, 600, 700, 800, 1000, 1200, 1500, 1800, 2200, 2600, 3200, 4000}) {
        if (hz < plane.r2_low || hz > plane.r2_high) continue;
        canvas.line({plane.x(hz), b.bottom()}, {plane.x(hz), b.bottom() + 3}, {.width = 0.6, .color = ink::soft});
        canvas.write({plane.x(hz), b.bottom() + 11}, fmt::format("{:.0f}", hz), style, Align::centre);
    }
    // The same as pitches, on the other sides.
    for (int key = 24; key <= 108; ++key) {
        auto const name = tuning.name(tuning.pitch(key)).pitch;
        bool const shown = name.alter == 0 && name.step != 'B' && name.step != 'E';
        if (!shown) continue;
        double const hz = in_hertz(tuning.pitch(key).frequency());
        if (hz > plane.r1_low && hz < plane.r1_high) {
            canvas.line({b.right(), plane.y(hz)}, {b.right() + 3, plane.y(hz)}, {.width = 0.6, .color = ink::soft});
            canvas.write({b.right() + 5, plane.y(hz) + 2.6}, name.str(), style);
        }
        if (hz > plane.r2_low && hz < plane.r2_high) {
            canvas.line({plane.x(hz), b.top - 3}, {plane.x(hz), b.top}, {.width = 0.6, .color = ink::soft});
            canvas.write({plane.x(hz), b.top - 5}, name.str(), style, Align::centre);
        }
    }
    canvas.write({b.left, b.bottom() + 23}, "front  ←   fR2 in Hz   →  back", plain(type::label));
    canvas.write({b.left, b.top - 17}, "close  ↑   fR1 in Hz   ↓  open", plain(type::label));
    canvas.stroke(Path().rectangle(b), {.width = 0.7, .color = ink::soft});
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
            if (auto const spot = labels.find(wish, 0)) canvas.text({spot->left - extent.left, spot->top + extent.above}, name, style);
        };
        if (hz > plane.r1_low && hz < plane.r1_high) {
            double const y = plane.y(hz);
            canvas.line({b.left, y}, {b.right(), y}, pen);
            label({b.left + 4, y - 2.5 - extent.above - extent.below, extent.right - extent.left, extent.above + extent.below});
        }
        if (hz > plane.r2_low && hz < plane.r2_high) {
            double const x = plane.x(hz);
            canvas.line({x, b.top}, {x, b.bottom()}, {.width = pen.width, .color = pen.color, .dashes = {3, 2}});
            label({x + 2.5, b.bottom() - 5 - extent.above - extent.below, extent.right - extent.left, extent.above + extent.below});
        }
    }
}

void draw_arrow(Canvas& canvas, Point from, Point to) {
    double const dx = to.x - from.x, dy = to.y - from.y, length = std::hypot(dx, dy);
    if (length < 3) return;
    double const ux = dx / length, uy = dy / length, head = std::min(7.0, length * 0.6);
    canvas.line(from, {to.x - ux * head * 0.8, to.y - uy * head * 0.8}, {.width = 1.3, .color = ink::modify});
    Point const base{to.x - ux * head, to.y - uy * head};
    canvas.fill(Path().move(to).line({base.x - uy * head * 0.4, base.y + ux * head * 0.4}).line({base.x + uy * head * 0.4, base.y - ux * head * 0.4}).close(), ink::modify);
}

} // namespace

std::vector<Page> resonance_map(Plan const& plan, Pitch pitch, Size paper, TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side;
    auto const& tuning = plan.passage.tuning;
    Page page{paper, Drawing(measurer)};
    auto& canvas = page.drawing;
    auto title = head_of(plan, sentence);
    title.aside = fmt::format("sung on {}", tuning.name(pitch).str());
    draw_margins(canvas, title, "resonance map", paper, 1, 1);
    Drawing head(measurer);
    double const used = draw_title(head, title, width);
    head.replay(canvas, {margin_side, margin_top});

    double const top = margin_top + used + 24, bottom = paper.height - margin_bottom - 68;
    auto const plane = plane_of(plan, pitch, {margin_side + 26, top, width - 52, bottom - top});
    draw_axes(canvas, plane, tuning);
    LabelPlacer labels({plane.box.left + 1, plane.box.top + 1, plane.box.width - 2, plane.box.height - 2});

    // The vowels' names are placed first, so that nothing takes their room.
    struct Name {
        Box box;
        std::string text;
        TextStyle style;
    };
    std::vector<Name> names;
    for (auto const& v : plan.vowels) {
        auto const centre = plane.at(v.resonances.r1, v.resonances.r2);
        auto const style = bold(16);
        auto const text = v.resonances.vowel.quality().ipa();
        auto const e = measurer.measure(text, style);
        auto const round = ellipse(plane, v.resonances.r1, v.resonances.r2).bounds();
        Box const wish{round.right() + 3, centre.y - (e.above + e.below) / 2, e.right - e.left, e.above + e.below};
        if (auto const spot = labels.find(wish, 60)) names.push_back({*spot, text, style});
    }
    for (auto const& v : plan.vowels) {
        auto const path = ellipse(plane, v.resonances.r1, v.resonances.r2);
        canvas.fill(path, ink::white);
        canvas.stroke(path, {.width = 0.8, .color = ink::first, .dashes = v.resonances.estimated ? std::vector<double>{2, 1.5} : std::vector<double>{}});
    }
    draw_harmonics(canvas, plane, pitch, labels);
    for (auto const& v : plan.vowels) {
        auto const centre = plane.at(v.resonances.r1, v.resonances.r2);
        canvas.fill(Path().circle(centre, 2.2), ink::black);
        auto const* cell = cell_at(v, pitch);
        if (!cell || cell->decision.advice != Advice::modify) continue;
        auto const& target = cell->decision.target;
        auto const aim = plane.at(target.r1, target.r2);
        draw_arrow(canvas, centre, aim);
        auto const style = bold(11, ink::modify);
        auto const text = target.shade.quality().ipa();
        auto const e = measurer.measure(text, style);
        Box const wish{aim.x + 4, aim.y + 3, e.right - e.left, e.above + e.below};
        if (auto const spot = labels.find(wish, 20)) canvas.text({spot->left - e.left, spot->top + e.above}, text, style);
    }
    for (auto const& name : names) {
        auto const e = measurer.measure(name.text, name.style);
        canvas.text({name.box.left - e.left, name.box.top + e.above}, name.text, name.style);
    }

    // Legend.
    auto const style = plain(type::label);
    double x = margin_side, y = bottom + 40;
    auto const say = [&](double sample, std::string_view text) {
        canvas.write({x + sample + 4, y}, text, style);
        x += sample + 4 + measurer.measure(text, style).advance + 14;
    };
    canvas.line({x, y - 3}, {x + 16, y - 3}, {.width = 1.3, .color = ink::black});
    say(16, "harmonic at fR1");
    canvas.line({x, y - 3}, {x + 16, y - 3}, {.width = 0.8, .color = ink::black, .dashes = {3, 2}});
    say(16, "harmonic at fR2");
    draw_arrow(canvas, {x, y - 3}, {x + 18, y - 3});
    say(18, "modify: from the vowel's own shape to the target");
    bool const estimated = std::ranges::any_of(plan.vowels, [](VowelPlan const& v) { return v.resonances.estimated; });
    if (estimated) {
        x = margin_side;
        y += 13;
        canvas.stroke(Path().circle({x + 6, y - 3}, 5), {.width = 0.8, .color = ink::first, .dashes = {2, 1.5}});
        say(12, "estimated, not measured");
    }
    std::vector<Page> result;
    result.push_back(std::move(page));
    return result;
}

} // namespace vowelway::chart
