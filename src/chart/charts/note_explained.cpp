// SPDX-License-Identifier: MIT
// One note explained: what the harmonics are with the shape kept and changed, where the resonances lie, what
// the tract does, and what each shape costs. Kept is filled and solid, changed is outlined and dashed, on
// every panel.
#include "chart/canvas/label_placer.hpp"
#include "chart/charts/charts.hpp"
#include "chart/page/front.hpp"
#include "chart/page/marks.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>

namespace vowelway::chart {
namespace {

constexpr double longest = 5150; // hertz: the right end of the spectra, a little beyond the last harmonic
constexpr Ink kept_ink = ink::soft, changed_ink = ink::modify;
Pen const kept_pen{.width = 1.2, .color = kept_ink},
    changed_pen{.width = 1.2, .color = changed_ink, .dashes = {4, 1.8}};

/// A frame with a scale along each side.
struct Panel {
    Box box;
    double x_from = 0, x_to = 1, y_from = 0, y_to = 1;
    double x(double v) const { return box.left + box.width * (v - x_from) / (x_to - x_from); }
    double y(double v) const { return box.bottom() - box.height * (v - y_from) / (y_to - y_from); }
    double held(double v) const { return y(std::clamp(v, y_from, y_to)); }
};

double heading(Canvas& canvas, Box const& box, std::string_view text) {
    canvas.write({box.left, box.top + 10}, text, bold(type::heading));
    canvas.line({box.left, box.top + 14.5}, {box.right(), box.top + 14.5},
                {.width = 0.8, .color = ink::black});
    return box.top + 18;
}

/// Lines and numbers of the upright scale.
void scale_y(Canvas& canvas, Panel const& p, double step, std::string_view unit) {
    auto const style = plain(type::small, ink::soft);
    for (double v = std::ceil(p.y_from / step) * step; v <= p.y_to + 1e-9; v += step) {
        canvas.line({p.box.left, p.y(v)}, {p.box.right(), p.y(v)}, {.width = 0.4, .color = ink::hair});
        canvas.write({p.box.left - 4, p.y(v) + 2.6}, fmt::format("{:g}", v + 0.0), style, Align::right);
    }
    canvas.write({p.box.left - 4, p.box.top - 8}, unit, style, Align::right);
}

void scale_x(Canvas& canvas, Panel const& p, double step, double shown_as, std::string_view unit) {
    auto const style = plain(type::small, ink::soft);
    double const last = p.x_to - (p.x_to - p.x_from) * 0.04;
    for (double v = p.x_from; v <= last; v += step) {
        canvas.line({p.x(v), p.box.bottom()}, {p.x(v), p.box.bottom() + 3},
                    {.width = 0.6, .color = ink::soft});
        canvas.write({p.x(v), p.box.bottom() + 11}, fmt::format("{:g}", v / shown_as), style, Align::centre);
    }
    canvas.write({p.box.right(), p.box.bottom() + 11}, unit, style, Align::right);
}

/// A label where it is wished, or as near as there is room; nothing where there is none.
void place(Canvas& canvas, LabelPlacer& labels, Point centre, std::string_view text, TextStyle const& style,
           double most) {
    auto const e = canvas.measurer().measure(text, style);
    Box const wish{centre.x - (e.right - e.left) / 2, centre.y - (e.above + e.below) / 2, e.right - e.left,
                   e.above + e.below};
    if (auto const spot = labels.find(wish, most))
        canvas.text({spot->left - e.left, spot->top + e.above}, text, style);
}

/// The harmonics as bars: kept filled at the left of the frequency, changed outlined at its right.
void draw_spectrum(Canvas& canvas, plan::NoteExplanation const& e, Box const& area) {
    double top = heading(canvas, area, "Harmonics");
    Panel p{.box = {area.left + 26, top + 14, area.width - 26, area.bottom() - top - 40}, .x_to = longest};
    double high = -200;
    for (auto const* shape : {&e.kept, e.changed ? &*e.changed : nullptr})
        if (shape)
            for (auto const& level : shape->harmonics) high = std::max(high, level.value);
    p.y_to = std::ceil((high + 3) / 10) * 10;
    p.y_from = p.y_to - 70;
    scale_y(canvas, p, 10, "dB");
    double const apart = p.x(in_hertz(e.note.pitch.frequency())) - p.x(0),
                 wide = std::clamp(apart * 0.3, 1.4, 6.0);
    // Without a change the one bar stands on the frequency itself.
    double const shift = e.changed ? wide * 0.06 : -wide / 2;
    for (std::size_t i = 0; i < e.harmonics.size(); ++i) {
        double const x = p.x(in_hertz(e.harmonics[i])), y = p.held(e.kept.harmonics[i].value);
        if (y < p.box.bottom() - 0.3)
            canvas.fill(Box{e.changed ? x - wide - shift : x + shift, y, wide, p.box.bottom() - y}, kept_ink);
        if (!e.changed) continue;
        double const z = p.held(e.changed->harmonics[i].value);
        if (z < p.box.bottom() - 0.3)
            canvas.stroke(
                Path().rectangle({x + shift + 0.35, z + 0.35, wide - 0.7, p.box.bottom() - z - 0.35}),
                {.width = 0.7, .color = changed_ink});
    }
    canvas.line({p.box.left, p.box.bottom()}, {p.box.right(), p.box.bottom()},
                {.width = 0.7, .color = ink::soft});
    LabelPlacer labels({p.box.left, p.box.bottom(), p.box.width + 14, 15});
    // Every one where there is room, else every second, fifth or tenth.
    std::size_t every = 1;
    for (std::size_t const wider : {2, 5, 10})
        if (apart * static_cast<double>(every) < 26) every = wider;
    for (std::size_t i = 0; i < e.harmonics.size(); ++i)
        if (i == 0 || (i + 1) % every == 0)
            place(canvas, labels, {p.x(in_hertz(e.harmonics[i])), p.box.bottom() + 8},
                  Harmonic{static_cast<int>(i) + 1}.str(),
                  i < 2 ? bold(type::small) : plain(type::small, ink::soft), 0);
    canvas.write({area.right(), area.bottom() - 1}, "level of each harmonic, 1 m from the mouth in the open",
                 slanted(type::small, ink::soft), Align::right);
}

/// A resonance and one deviation to each side; kept: filled and named, changed: dashed.
void draw_resonance(Canvas& canvas, Panel const& p, Resonance const& r, Ink color, Ink wash, bool changed) {
    double const x = p.x(in_hertz(r.centre)), from = std::max(p.box.left, p.x(in_hertz(r.centre - r.sd))),
                 to = std::min(p.box.right(), p.x(in_hertz(r.centre + r.sd)));
    if (!changed) canvas.fill(Box{from, p.box.top, to - from, p.box.height}, wash);
    auto const upright = [&](double at, double top, Pen pen) {
        if (changed)
            pen.color = changed_ink;
        else
            pen.dashes.clear();
        canvas.line({at, top}, {at, p.box.bottom()}, pen);
    };
    for (double const edge : {from, to})
        upright(edge, p.box.top, {.width = 0.4, .color = color, .dashes = {1.2, 1.6}});
    upright(x, p.box.top - 3, {.width = 0.8, .color = color, .dashes = {4, 1.8}});
}

std::string value_of(Resonance const& r) {
    return fmt::format("{:.0f} ±{:.0f} Hz", std::round(in_hertz(r.centre) / 10) * 10,
                       std::max(5.0, std::round(in_hertz(r.sd) / 5) * 5));
}

// Where a resonance stays, it is told and drawn once.
bool moves(Resonance const& from, Resonance const& to) {
    return std::abs(in_hertz(to.centre - from.centre)) >= 5;
}

void draw_curve(Canvas& canvas, Panel const& p, plan::NoteExplanation const& e,
                plan::ShapeExplained const& shape, Pen const& pen) {
    Path path;
    for (std::size_t i = 0; i < e.grid.size(); ++i) {
        Point const at{p.x(in_hertz(e.grid[i])), p.held(shape.curve[i].value)};
        if (i == 0)
            path.move(at);
        else
            path.line(at);
    }
    canvas.stroke(path, pen);
}

void draw_resonances(Canvas& canvas, plan::NoteExplanation const& e, Box const& area) {
    double const top = heading(canvas, area, "Resonances of the tract");
    Panel p{.box = {area.left + 26, top + 19, area.width - 26, area.bottom() - top - 19 - 24},
            .x_to = longest};
    double high = 10, low = -10;
    for (auto const* shape : {&e.kept, e.changed ? &*e.changed : nullptr})
        if (shape)
            for (auto const& gain : shape->curve)
                high = std::max(high, gain.value), low = std::min(low, gain.value);
    p.y_to = std::ceil(high / 10) * 10;
    p.y_from = std::max(std::floor(low / 10) * 10, p.y_to - 70);
    scale_y(canvas, p, 20, "dB");
    LabelPlacer labels({p.box.left, top, p.box.width, 17});
    std::string told;
    for (auto const& [name, member, color, wash] :
         {std::tuple{"fR1", &plan::ShapeExplained::r1, ink::first, ink::first_wash},
          {"fR2", &plan::ShapeExplained::r2, ink::second, ink::second_wash}}) {
        auto const& kept = e.kept.*member;
        draw_resonance(canvas, p, kept, color, wash, false);
        place(canvas, labels, {p.x(in_hertz(kept.centre)), p.box.top - 9}, name, bold(type::label, color), 3);
        told += fmt::format("{}{} {}", told.empty() ? "" : "     ", name, value_of(kept));
        if (!e.changed || !moves(kept, (*e.changed).*member)) continue;
        draw_resonance(canvas, p, (*e.changed).*member, color, wash, true);
        told += ", changed " + value_of((*e.changed).*member);
    }
    canvas.write({area.right(), area.top + 10}, told, plain(type::label), Align::right);
    draw_curve(canvas, p, e, e.kept, kept_pen);
    if (e.changed) draw_curve(canvas, p, e, *e.changed, changed_pen);
    // Where the harmonics stand, so that one sees which resonance has one.
    for (auto const& f : e.harmonics) {
        double const x = p.x(in_hertz(f));
        canvas.line({x, p.box.bottom()}, {x, p.box.bottom() - 6}, {.width = 1, .color = ink::black});
    }
    canvas.line({p.box.left, p.box.bottom()}, {p.box.right(), p.box.bottom()},
                {.width = 0.7, .color = ink::soft});
    scale_x(canvas, p, 500, 1000, "kHz");
    canvas.write({area.right(), area.bottom() - 1},
                 "gain of the tract for a sung note, blurred by vibrato; ticks: the harmonics",
                 slanted(type::small, ink::soft), Align::right);
}

double radius(acoustics::TubeSection const& section) {
    return std::sqrt(in_square_centimetres(section.area) / std::numbers::pi);
}

/// The outline of a row of round tubes of these cross-sections, from the glottis to the open lips.
Path profile(Panel const& p, acoustics::AreaFunction const& tract) {
    Path path;
    for (double const side : {1.0, -1.0}) {
        double at = 0;
        path.move({p.x(0), p.y(0)});
        for (auto const& section : tract) {
            double const y = p.held(side * radius(section));
            path.line({p.x(at), y});
            at += in_centimetres(section.length);
            path.line({p.x(at), y});
        }
        path.line({p.x(at), p.y(0)});
    }
    return path;
}

void draw_tract(Canvas& canvas, plan::NoteExplanation const& e, Box const& area) {
    double const top = heading(canvas, area, "The shape of the tract");
    Panel p{.box = {area.left + 26, top + 14, area.width - 30, area.bottom() - top - 14 - 36}};
    double length = 0, widest = 1;
    for (auto const* shape : {&e.kept, e.changed ? &*e.changed : nullptr})
        if (shape) {
            length = std::max(length, in_centimetres(length_of(shape->tract)));
            for (auto const& section : shape->tract)
                widest = std::max(widest, std::ceil(2 * radius(section)) / 2);
        }
    p.x_to = length;
    p.y_from = -widest, p.y_to = widest;
    auto const style = plain(type::small, ink::soft);
    double const whole = std::floor(widest);
    for (double v = -whole; v <= whole; v += 1) {
        canvas.line({p.box.left, p.y(v)}, {p.box.right(), p.y(v)}, {.width = 0.4, .color = ink::hair});
        canvas.write({p.box.left - 4, p.y(v) + 2.6}, fmt::format("{:g}", std::abs(v)), style, Align::right);
    }
    canvas.write({p.box.left - 4, p.box.top - 8}, "cm", style, Align::right);
    auto const outline = profile(p, e.kept.tract);
    canvas.fill(outline, ink::hair);
    canvas.stroke(outline, {.width = 0.8, .color = kept_ink});
    if (e.changed) canvas.stroke(profile(p, e.changed->tract), changed_pen);
    canvas.line({p.box.left, p.box.bottom()}, {p.box.right(), p.box.bottom()},
                {.width = 0.7, .color = ink::soft});
    for (double v = 0; v <= p.x_to; v += 5)
        canvas.line({p.x(v), p.box.bottom()}, {p.x(v), p.box.bottom() + 3},
                    {.width = 0.6, .color = ink::soft});
    canvas.write({p.box.left, p.box.bottom() + 12}, "glottis", style);
    canvas.write({p.box.right(), p.box.bottom() + 12}, "lips", style, Align::right);
    canvas.write({p.box.left + p.box.width / 2, p.box.bottom() + 12}, "a tick is 5 cm", style, Align::centre);
    // What speaks against the model is said before what it is.
    auto const& objection = e.changed && !e.changed->tract_objection.empty() ? e.changed->tract_objection
                                                                             : e.kept.tract_objection;
    auto const note = slanted(type::small, objection.empty() ? ink::soft : ink::modify);
    auto const caption =
        objection.empty() ? "as a round tube, radius in cm; one of many with these resonances" : objection;
    canvas.write({area.left, area.bottom() - 1}, fitted(canvas.measurer(), caption, note, area.width), note);
}

void draw_cost(Canvas& canvas, plan::NoteExplanation const& e, Box const& area) {
    double y = heading(canvas, area, "What it costs") + 2;
    double const words = std::min(108.0, area.width * 0.44), numbers = e.changed ? 42 : 22;
    double high = 0.2;
    for (auto const* shape : {&e.kept, e.changed ? &*e.changed : nullptr})
        if (shape) high = std::max(high, shape->cost.total());
    double const from = area.left + words, length = area.width - words - numbers - 4;
    double const row =
        std::min(22.0, (area.bottom() - 14 - y) / static_cast<double>(plan::cost_term_names.size() + 1));
    auto const bars = [&](std::string_view text, double kept, double changed, bool total) {
        auto const& m = canvas.measurer();
        auto const style = total ? bold(type::label) : plain(type::label);
        double const thick = std::min(5.5, row * 0.32), middle = y + row / 2;
        canvas.write({area.left, middle + 3}, fitted(m, text, style, words - 4), style);
        double const upper = e.changed ? middle - thick - 0.5 : middle - thick / 2;
        if (kept > 0.001) canvas.fill(Box{from, upper, std::max(0.6, length * kept / high), thick}, kept_ink);
        if (e.changed && changed > 0.001)
            canvas.stroke(Path().rectangle({from + 0.35, middle + 0.85,
                                            std::max(0.6, length * changed / high - 0.7), thick - 0.7}),
                          {.width = 0.7, .color = changed_ink});
        auto const figures = total ? bold(type::small) : plain(type::small);
        canvas.write({e.changed ? area.right() - 22 : area.right(), middle + 2.6},
                     fmt::format("{:.2f}", kept), figures, Align::right);
        if (e.changed) {
            auto coloured = figures;
            coloured.color = changed_ink;
            canvas.write({area.right(), middle + 2.6}, fmt::format("{:.2f}", changed), coloured,
                         Align::right);
        }
        y += row;
    };
    plan::CostTerms const none;
    auto const& changed = e.changed ? e.changed->cost : none;
    for (auto const& term : plan::cost_term_names)
        bars(term.words, e.kept.cost.*term.value, changed.*term.value, false);
    canvas.line({area.left, y}, {area.right(), y}, {.width = 0.4, .color = ink::rule});
    bars("total", e.kept.cost.total(), changed.total(), true);
    canvas.line({from, area.top + 20}, {from, y}, {.width = 0.5, .color = ink::rule});
    auto const note = slanted(type::small, ink::soft);
    canvas.write({area.left, area.bottom() - 1},
                 fitted(canvas.measurer(), "1: a clear loss of the vowel for a second; the lower total wins",
                        note, area.width),
                 note);
}

/// Syllable, pitch, vowel, what to do and why. Returns how far down it went.
double draw_verdict(Canvas& canvas, plan::NoteExplanation const& e, double y, double width) {
    auto const& d = e.decision;
    auto const& m = canvas.measurer();
    double x = 0;
    y += 13;
    auto const say = [&](std::string const& text, TextStyle const& style, double gap) {
        auto const shown = fitted(m, text, style, width - x);
        if (shown.empty()) return;
        canvas.write({x, y}, shown, style);
        x += m.measure(shown, style).advance + gap;
    };
    if (!e.syllable.empty()) say(e.syllable, bold(15), 8);
    say(fmt::format("{} on {}", slashed(e.vowel.vowel), e.note.spelled.str()), plain(13), 8);
    say(fmt::format("fo {:.0f} Hz, {:.1f} s", in_hertz(e.note.pitch.frequency()), in_seconds(e.note.length)),
        plain(type::body, ink::soft), 14);
    advice_sign(canvas, {x + 4.5, y - 4}, 9, d.advice);
    x += 13;
    auto const advice = bold(13, color_of(d.advice));
    say(e.changed ? "modify toward " + d.target.shade.quality().ipa() : std::string(to_string(d.advice)),
        advice, 10);
    y += 4;
    auto const lines = [&](std::string const& text, TextStyle const& style) {
        for (auto const& line : wrapped(m, text, style, width))
            canvas.write({0, y += 12}, fitted(m, line, style, width), style);
    };
    if (!d.gestures.empty()) {
        std::string gestures;
        for (auto const& g : d.gestures) gestures += (gestures.empty() ? "" : ", ") + g.words;
        lines("What to do: " + gestures + ".", plain(type::body));
    }
    lines("Why: " + d.why + ".", plain(type::body));
    std::string heard = "Heard as " + d.heard_kept.vowel.quality().ipa() +
                        (e.changed ? " if kept, as " + d.heard.vowel.quality().ipa() + " if changed" : "") +
                        ".";
    lines(heard, plain(type::body));
    if (e.draws > 0)
        lines(fmt::format("Of {} random draws of the resonances: hold {:.0f} %, migrate {:.0f} %, "
                          "modify {:.0f} %.",
                          e.draws, 100 * e.shares.hold, 100 * e.shares.migrate, 100 * e.shares.modify),
              plain(type::body));
    if (e.vowel.estimated)
        lines("Guessed: " + slashed(e.vowel.vowel) + " is not measured: " + e.vowel.origin + ".",
              plain(type::label, ink::modify));
    if (e.note.vowel && e.note.vowel->origin == VowelOrigin::guessed)
        lines("Guessed: the vowel of this syllable is not certain.", plain(type::label, ink::modify));
    return y + 6;
}

void draw_legend(Canvas& canvas, plan::NoteExplanation const& e, double x, double y) {
    auto const style = plain(type::label);
    auto const say = [&](double sample, std::string_view text) {
        canvas.write({x + sample + 4, y}, text, style);
        x += sample + 4 + canvas.measurer().measure(text, style).advance + 14;
    };
    canvas.fill(Box{x, y - 7, 5, 8}, kept_ink);
    canvas.line({x + 8, y - 3}, {x + 24, y - 3}, kept_pen);
    say(24, "the vowel's own shape");
    if (e.changed) {
        canvas.stroke(Path().rectangle({x + 0.35, y - 6.65, 4.3, 7.3}), {.width = 0.7, .color = changed_ink});
        canvas.line({x + 8, y - 3}, {x + 24, y - 3}, changed_pen);
        say(24, "changed as advised");
    }
    canvas.fill(Box{x, y - 8, 18, 9}, ink::first_wash);
    canvas.line({x + 9, y - 8}, {x + 9, y + 1}, {.width = 0.8, .color = ink::first});
    say(18, "resonance ± its uncertainty");
}

} // namespace

Page note_explained(plan::NoteExplanation const& e, Size paper, TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side;
    Page page{paper, Drawing(measurer)};
    auto& canvas = page.drawing;
    auto head = head_of(e.singer, e.technique);
    head.title = fmt::format("Bar {}, beat {:g}", e.note.measure, std::round(e.note.beat * 100) / 100);
    head.aside = e.title + (e.title.empty() || e.composer.empty() ? "" : ", ") + e.composer;
    draw_margins(canvas, head, "one note explained", paper, 1, 1);
    Drawing top(measurer);
    double used = draw_title(top, head, width);
    used = draw_verdict(top, e, used - 4, width);
    top.replay(canvas, {margin_side, margin_top});

    double y = margin_top + used + 14;
    draw_legend(canvas, e, margin_side, y);
    y += 10;
    double const room = paper.height - margin_bottom - 6 - y, gap = 10;
    double const first = (room - 2 * gap) * 0.34, second = (room - 2 * gap) * 0.34,
                 third = room - 2 * gap - first - second;
    draw_spectrum(canvas, e, {margin_side, y, width, first});
    y += first + gap;
    draw_resonances(canvas, e, {margin_side, y, width, second});
    y += second + gap;
    double const left = (width - 20) * 0.5;
    draw_tract(canvas, e, {margin_side, y, left, third});
    draw_cost(canvas, e, {margin_side + left + 20, y, width - left - 20, third});
    return page;
}

} // namespace vowelway::chart
