// SPDX-License-Identifier: MIT
#include "chart/charts/probe_map/probe_plane.hpp"

#include "chart/canvas/label_placer.hpp"
#include "chart/canvas/style.hpp"
#include "chart/charts/probe_map/probe_marks.hpp"
#include "chart/page/resonance_plane.hpp"
#include "core/ranges.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace vowelway::chart {
namespace {

std::optional<Spot> spot_of(analysis::TractReading const& t) {
    if (!t.resonances[0] || !t.resonances[1]) return std::nullopt;
    return Spot{*t.resonances[0], *t.resonances[1]};
}

std::optional<Spot> spot_of(analysis::Aim const& aim) {
    if (!aim.tract[0] || !aim.tract[1]) return std::nullopt;
    return Spot{*aim.tract[0], *aim.tract[1]};
}

/// Names of vowels and targets keep clear of the marks and of each other: to the right, else to the left of
/// what they name.
class Names {
  public:
    Names(Box area, TextMeasurer const& measurer) : labels_(area), measurer_(&measurer) {}
    void keep_clear(Point c, double r) { labels_.block({c.x - r, c.y - r, 2 * r, 2 * r}); }
    void name(std::string text, TextStyle const& style, Box const& of) {
        auto const e = measurer_->measure(text, style);
        double const w = e.right - e.left, h = e.above + e.below, y = of.top + of.height / 2 - h / 2;
        for (double const most : {8.0, 30.0, 120.0})
            for (double const x : {of.right() + 3, of.left - 3 - w})
                if (auto const spot = labels_.find({x, y, w, h}, most)) {
                    placed_.push_back({{spot->left - e.left, spot->top + e.above}, std::move(text), style});
                    return;
                }
    }
    void draw(Canvas& canvas) const {
        for (auto const& p : placed_) canvas.text(p.at, p.text, p.style);
    }

  private:
    struct Placed {
        Point at;
        std::string text;
        TextStyle style;
    };
    LabelPlacer labels_;
    TextMeasurer const* measurer_;
    std::vector<Placed> placed_;
};

std::vector<Spot> all_spots(ProbeMap const& p) {
    std::vector<Spot> spots;
    for (auto const& v : p.due) spots.push_back({v.r1, v.r2});
    for (auto const& t : p.takes)
        if (auto const s = spot_of(t.tract); s && t.usable())
            spots.push_back({{s->r1.centre, {}, {}, {}}, {s->r2.centre, {}, {}, {}}});
    for (auto const& v : p.vowels)
        if (auto const s = spot_of(v.tract)) spots.push_back(*s);
    for (auto const& c : p.checks)
        if (auto const s = spot_of(c.aim); s && c.against == analysis::Checked::Against::plan)
            spots.push_back(*s);
    return spots;
}

analysis::MeasuredVowel const* found_of(ProbeMap const& p, analysis::ProbeComparison const& c) {
    auto const at = ranges::find_if(
        p.vowels, [&](analysis::MeasuredVowel const& v) { return v.vowel == c.vowel && v.kind == c.kind; });
    return at == p.vowels.end() ? nullptr : &*at;
}

/// One name for what was due and what was measured where they overlap, else one each.
void name_vowel(Names& names, ProbeMap const& p, Plane const& plane, VowelResonances const& due, Box around) {
    std::vector<Box> apart;
    for (auto const& found : p.vowels) {
        auto const one = spot_of(found.tract);
        if (!one || !(found.vowel.quality() == due.vowel.quality())) continue;
        auto const box = ellipse(plane, *one).bounds();
        if (box.overlaps(around))
            around = box.right() > around.right() ? box : around;
        else
            apart.push_back(box);
    }
    auto const name = due.vowel.quality().ipa();
    names.name(name, apart.empty() ? bold(16) : plain(13, ink::first), around);
    for (auto const& box : apart) names.name(name, bold(16), box);
}

void draw_due(Canvas& canvas, ProbeMap const& p, Plane const& plane, Names& names) {
    bool const check = !p.checks.empty();
    for (auto const& v : p.due) {
        Spot const spot{v.r1, v.r2};
        bool const measured = check && !p.reference.average && !v.estimated;
        auto const path = ellipse(plane, spot);
        canvas.fill(path, ink::white);
        canvas.stroke(path, {.width = 0.8,
                             .color = ink::first,
                             .dashes = measured ? std::vector<double>{} : std::vector<double>{2, 1.5}});
        draw_cross(canvas, plane.at(spot));
        name_vowel(names, p, plane, v, path.bounds());
    }
}

void draw_targets(Canvas& canvas, ProbeMap const& p, Plane const& plane, Names& names) {
    for (auto const& c : p.checks) {
        if (c.against != analysis::Checked::Against::plan) continue;
        auto const spot = spot_of(c.aim);
        if (!spot) continue;
        auto const at = plane.at(*spot);
        canvas.stroke(ellipse(plane, *spot), {.width = 0.6, .color = ink::modify, .dashes = {0.8, 1.6}});
        draw_target_mark(canvas, at);
        names.name(c.shade, bold(11, ink::modify), {at.x - 5, at.y - 5, 10, 10});
    }
}

/// Fine lines from the vowel to its takes.
void draw_takes(Canvas& canvas, ProbeMap const& p, Plane const& plane, analysis::MeasuredVowel const& v,
                Point centre) {
    if (v.takes < 2) return;
    for (auto const& t : p.takes) {
        auto const one = spot_of(t.tract);
        if (!t.usable() || !one || !(t.vowel == v.vowel) || t.excitation.kind != v.kind) continue;
        canvas.line(centre, plane.at(*one), {.width = 0.45, .color = ink::soft});
        draw_single_take(canvas, v.kind, plane.at(*one));
    }
}

void draw_measured(Canvas& canvas, ProbeMap const& p, Plane const& plane) {
    for (auto const& v : p.vowels) {
        auto const spot = spot_of(v.tract);
        if (!spot) continue;
        canvas.stroke(ellipse(plane, *spot), {.width = 1.0, .color = ink::black, .dashes = {}});
        draw_takes(canvas, p, plane, v, plane.at(*spot));
    }
}

/// Back from each vowel that is off.
void draw_arrows(Canvas& canvas, ProbeMap const& p, Plane const& plane) {
    for (auto const& c : p.checks) {
        auto const* found = found_of(p, c.comparison);
        auto const from = found ? spot_of(found->tract) : std::nullopt, to = spot_of(c.aim);
        if (c.comparison.verdict == analysis::Verdict::moved && from && to)
            draw_arrow(canvas, plane.at(*from), plane.at(*to));
    }
}

} // namespace

void draw_probe_plane(Canvas& canvas, ProbeMap const& p, Box const& box) {
    auto const plane = plane_around(all_spots(p), box);
    auto const& b = plane.box;
    draw_axes(canvas, plane, p.reference.tuning);
    Names names({b.left + 1, b.top + 1, b.width - 2, b.height - 2}, canvas.measurer());
    for (auto const& v : p.vowels)
        if (auto const s = spot_of(v.tract)) names.keep_clear(plane.at(*s), 4);
    draw_due(canvas, p, plane, names);
    draw_targets(canvas, p, plane, names);
    draw_measured(canvas, p, plane);
    draw_arrows(canvas, p, plane);
    for (auto const& v : p.vowels)
        if (auto const s = spot_of(v.tract)) draw_pooled_takes(canvas, v.kind, plane.at(*s));
    names.draw(canvas);
}

} // namespace vowelway::chart
