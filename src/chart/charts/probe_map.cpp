// SPDX-License-Identifier: MIT
// New probes in the plane of fR1 and fR2: what was sung again, against what it should be like.
#include "chart/canvas/label_placer.hpp"
#include "chart/charts/charts.hpp"
#include "chart/page/front.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/probe_table.hpp"
#include "chart/page/resonance_plane.hpp"
#include "core/ranges.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace vowelway::chart {
namespace {

constexpr std::string_view sentence_of_check =
    "Solid marks are the new probes, all takes of a vowel together; fine lines lead to the single takes. "
    "Ellipses are where "
    "each vowel should be; both are one standard deviation wide. An arrow leads back from a vowel that is "
    "off.";
constexpr std::string_view sentence_of_measurement =
    "Solid marks are the vowels as measured, all takes together, in an ellipse of one standard deviation; "
    "fine lines lead to the single "
    "takes. Dashed ellipses show where they were expected.";

std::optional<Spot> spot_of(analysis::TractReading const& t) {
    if (!t.resonances[0] || !t.resonances[1]) return std::nullopt;
    return Spot{*t.resonances[0], *t.resonances[1]};
}

std::optional<Spot> spot_of(analysis::Aim const& aim) {
    if (!aim.tract[0] || !aim.tract[1]) return std::nullopt;
    return Spot{*aim.tract[0], *aim.tract[1]};
}

/// Each kind of probe has a shape: whisper round, creak square, sung three-cornered.
Path shape_of(analysis::ProbeKind kind, Point c, double r) {
    Path shape;
    switch (kind) {
    case analysis::ProbeKind::whisper:
        shape.circle(c, r);
        break;
    case analysis::ProbeKind::creak:
        shape.rectangle({c.x - 0.88 * r, c.y - 0.88 * r, 1.76 * r, 1.76 * r});
        break;
    case analysis::ProbeKind::sung:
        shape.move({c.x, c.y - 1.2 * r})
            .line({c.x + 1.1 * r, c.y + 0.8 * r})
            .line({c.x - 1.1 * r, c.y + 0.8 * r})
            .close();
        break;
    }
    return shape;
}

void single(Canvas& canvas, analysis::ProbeKind kind, Point at) {
    auto const shape = shape_of(kind, at, 2.0);
    canvas.fill(shape, ink::white);
    canvas.stroke(shape, {.width = 0.7, .color = ink::black});
}

void pooled(Canvas& canvas, analysis::ProbeKind kind, Point at) {
    canvas.fill(shape_of(kind, at, 4.6), ink::white);
    canvas.fill(shape_of(kind, at, 3.6), ink::black);
}

void target_mark(Canvas& canvas, Point c) {
    constexpr double r = 4.4;
    canvas.stroke(
        Path().move({c.x, c.y - r}).line({c.x + r, c.y}).line({c.x, c.y + r}).line({c.x - r, c.y}).close(),
        {.width = 1.1, .color = ink::modify});
    canvas.line({c.x - 1.3, c.y}, {c.x + 1.3, c.y}, {.width = 0.9, .color = ink::modify});
    canvas.line({c.x, c.y - 1.3}, {c.x, c.y + 1.3}, {.width = 0.9, .color = ink::modify});
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

void draw_plane(Canvas& canvas, ProbeMap const& p, Plane const& plane) {
    auto const& b = plane.box;
    bool const check = !p.checks.empty();
    draw_axes(canvas, plane, p.reference.tuning);
    Names names({b.left + 1, b.top + 1, b.width - 2, b.height - 2}, canvas.measurer());
    for (auto const& v : p.vowels)
        if (auto const s = spot_of(v.tract)) names.keep_clear(plane.at(*s), 4);
    for (auto const& v : p.due) {
        Spot const spot{v.r1, v.r2};
        auto const path = ellipse(plane, spot);
        canvas.fill(path, ink::white);
        canvas.stroke(path, {.width = 0.8,
                             .color = ink::first,
                             .dashes = check && !p.reference.average && !v.estimated
                                           ? std::vector<double>{}
                                           : std::vector<double>{2, 1.5}});
        auto const c = plane.at(spot);
        for (auto const& [dx, dy] : {std::pair{2.6, 0.0}, std::pair{0.0, 2.6}})
            canvas.line({c.x - dx, c.y - dy}, {c.x + dx, c.y + dy}, {.width = 0.8, .color = ink::first});
        // One name for both where they overlap, else one each.
        auto around = path.bounds();
        std::vector<Box> apart;
        for (auto const& found : p.vowels) {
            auto const one = spot_of(found.tract);
            if (!one || !(found.vowel.quality() == v.vowel.quality())) continue;
            auto const box = ellipse(plane, *one).bounds();
            if (box.overlaps(around))
                around = box.right() > around.right() ? box : around;
            else
                apart.push_back(box);
        }
        auto const name = v.vowel.quality().ipa();
        names.name(name, apart.empty() ? bold(16) : plain(13, ink::first), around);
        for (auto const& box : apart) names.name(name, bold(16), box);
    }
    for (auto const& c : p.checks) {
        if (c.against != analysis::Checked::Against::plan) continue;
        auto const spot = spot_of(c.aim);
        if (!spot) continue;
        auto const at = plane.at(*spot);
        canvas.stroke(ellipse(plane, *spot), {.width = 0.6, .color = ink::modify, .dashes = {0.8, 1.6}});
        target_mark(canvas, at);
        names.name(c.shade, bold(11, ink::modify), {at.x - 5, at.y - 5, 10, 10});
    }
    for (auto const& v : p.vowels) {
        auto const spot = spot_of(v.tract);
        if (!spot) continue;
        auto const centre = plane.at(*spot);
        canvas.stroke(ellipse(plane, *spot), {.width = 1.0, .color = ink::black, .dashes = {}});
        if (v.takes < 2) continue;
        for (auto const& t : p.takes) {
            auto const one = spot_of(t.tract);
            if (!t.usable() || !one || !(t.vowel == v.vowel) || t.excitation.kind != v.kind) continue;
            canvas.line(centre, plane.at(*one), {.width = 0.45, .color = ink::soft});
            single(canvas, v.kind, plane.at(*one));
        }
    }
    for (auto const& c : p.checks) {
        auto const* found = found_of(p, c.comparison);
        auto const from = found ? spot_of(found->tract) : std::nullopt, to = spot_of(c.aim);
        if (c.comparison.verdict == analysis::Verdict::off && from && to)
            draw_arrow(canvas, plane.at(*from), plane.at(*to));
    }
    for (auto const& v : p.vowels)
        if (auto const s = spot_of(v.tract)) pooled(canvas, v.kind, plane.at(*s));
    names.draw(canvas);
}

double legend(Canvas& canvas, ProbeMap const& p, double y, double width) {
    auto const style = plain(type::label);
    auto const& m = canvas.measurer();
    double x = 0;
    y += 9;
    auto const entry = [&](double sample, std::string_view text, auto draw) {
        double const need = sample + 4 + m.measure(text, style).advance;
        if (x > 0 && x + need > width) x = 0, y += 12.5;
        draw(Point{x + sample / 2, y - 3});
        canvas.write({x + sample + 4, y}, text, style);
        x += need + 12;
    };
    for (auto const kind :
         {analysis::ProbeKind::whisper, analysis::ProbeKind::creak, analysis::ProbeKind::sung}) {
        bool const there =
            ranges::any_of(p.vowels, [&](analysis::MeasuredVowel const& v) { return v.kind == kind; });
        if (there) entry(9, to_string(kind), [&](Point c) { pooled(canvas, kind, c); });
    }
    bool const several =
        ranges::any_of(p.vowels, [](analysis::MeasuredVowel const& v) { return v.takes > 1; });
    if (several) entry(9, "a single take", [&](Point c) { single(canvas, p.vowels.front().kind, c); });
    entry(16,
          p.checks.empty()      ? "where it was expected"
          : p.reference.average ? "the average voice"
                                : "the profile",
          [&](Point c) {
              canvas.stroke(Path()
                                .move({c.x - 8, c.y})
                                .curve({c.x - 8, c.y - 5}, {c.x + 8, c.y - 5}, {c.x + 8, c.y})
                                .curve({c.x + 8, c.y + 5}, {c.x - 8, c.y + 5}, {c.x - 8, c.y}),
                            {.width = 0.8,
                             .color = ink::first,
                             .dashes = p.checks.empty() || p.reference.average ? std::vector<double>{2, 1.5}
                                                                               : std::vector<double>{}});
              canvas.line({c.x - 2.6, c.y}, {c.x + 2.6, c.y}, {.width = 0.8, .color = ink::first});
              canvas.line({c.x, c.y - 2.6}, {c.x, c.y + 2.6}, {.width = 0.8, .color = ink::first});
          });
    bool const planned = ranges::any_of(
        p.checks, [](analysis::Checked const& c) { return c.against == analysis::Checked::Against::plan; });
    if (planned) entry(9, "a target of the plan ± 3 %", [&](Point c) { target_mark(canvas, c); });
    bool const off = ranges::any_of(
        p.checks, [](analysis::Checked const& c) { return c.comparison.verdict == analysis::Verdict::off; });
    if (off)
        entry(18, "off: from the probe to where it should be", [&](Point c) {
            draw_arrow(canvas, {c.x - 9, c.y}, {c.x + 9, c.y});
        });
    return y + 8;
}

Head title_of(ProbeMap const& p) {
    bool const check = !p.checks.empty();
    auto head = head_of(p.reference, "");
    head.title = check ? "Vowels checked" : "Vowels measured";
    if (!check) {
        head.who = p.who;
        head.source =
            "expected near " + (p.reference.average ? "the " + p.reference.name : "the singer's profile");
        head.average = false;
    }
    head.aside = p.date;
    std::string files;
    for (std::size_t i = 0; i < std::min<std::size_t>(p.files.size(), 2); ++i)
        files += (i ? ", " : "") + p.files[i];
    if (p.files.size() > 2) files += fmt::format(" and {} more", p.files.size() - 2);
    head.how = files;
    head.sentence = check ? sentence_of_check : sentence_of_measurement;
    return head;
}

} // namespace

std::vector<Page> probe_map(ProbeMap const& p, Size paper, TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side;
    Page page{paper, Drawing(measurer)};
    auto& canvas = page.drawing;
    auto const head = title_of(p);
    draw_margins(canvas, head, p.checks.empty() ? "measurement" : "check", paper, 1, 1);
    Drawing above(measurer), below(measurer);
    double const used = draw_title(above, head, width);
    above.replay(canvas, {margin_side, margin_top});

    double under = legend(below, p, 0, width);
    under = draw_probe_table(below, p, under, width);

    double const top = margin_top + used + 24, bottom = paper.height - margin_bottom - under - 32;
    draw_plane(canvas, p, plane_around(all_spots(p), {margin_side + 26, top, width - 52, bottom - top}));
    below.replay(canvas, {margin_side, bottom + 30});
    std::vector<Page> pages;
    pages.push_back(std::move(page));
    return pages;
}

} // namespace vowelway::chart
