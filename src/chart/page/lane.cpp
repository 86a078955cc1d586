// SPDX-License-Identifier: MIT
#include "chart/page/lane.hpp"

#include "chart/page/marks.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace vowelway::chart {
namespace {

constexpr int most_in_lane = 24; // looked for in a lane

/// What is drawn of one sounding note.
struct Bands {
    Resonance r1, r2;
    bool aimed = false; ///< they are the target of a modification
};

std::optional<Bands> bands_of(plan::Plan const& plan, std::size_t note) {
    if (note >= plan.notes.size()) return std::nullopt;
    auto const& n = plan.notes[note];
    if (!n.vowel || !n.decision) return std::nullopt;
    auto const& own = plan.vowels[*n.vowel].resonances;
    return Bands{own.r1, own.r2, n.decision->advice == plan::Advice::modify};
}

Frequency top_of(Resonance const& r) { return r.centre + r.sd; }
Frequency bottom_of(Resonance const& r) { return std::max(r.centre - r.sd, hertz(30)); }

void band(Canvas& canvas, LaneScale const& scale, Resonance const& r, double from, double to, Ink line,
          Ink wash, bool second, plan::ZoneReading const& zone) {
    if (!scale.holds(top_of(r)) && !scale.holds(bottom_of(r))) return;
    double const top = scale.y(top_of(r)), bottom = scale.y(bottom_of(r));
    Box const box{from, top, to - from, std::max(bottom - top, 0.8)};
    canvas.fill(box, wash);
    if (!second) fill_zone(canvas, box, zone);
    Pen const edge{.width = second ? 0.6 : 1.1, // stands out from the harmonics without colour too
                   .color = line,
                   .dashes = second ? std::vector<double>{2.2, 1.4} : std::vector<double>{}};
    canvas.line({from, box.top}, {to, box.top}, edge);
    canvas.line({from, box.bottom()}, {to, box.bottom()}, edge);
}

/// Where a modification aims: a bracket of the target's centre across the note.
void aim(Canvas& canvas, LaneScale const& scale, Resonance const& own, Resonance const& target, double from,
         double to) {
    double const y = scale.y(target.centre), start = scale.y(own.centre);
    if (std::abs(y - start) < 1.2) return;
    double const x = (from + to) / 2 + std::min(3.0, (to - from) * 0.2);
    Pen const pen{.width = 0.9, .color = ink::modify};
    canvas.line({from + 1, y}, {to - 1, y}, {.width = 1.2, .color = ink::modify});
    canvas.line({x, start}, {x, y}, pen);
    double const way = y < start ? 1 : -1, size = std::min(2.6, std::abs(y - start) * 0.7);
    canvas.fill(Path()
                    .move({x, y})
                    .line({x - size * 0.7, y + way * size * 1.3})
                    .line({x + size * 0.7, y + way * size * 1.3})
                    .close(),
                ink::modify);
}

bool within(Frequency f, Resonance const& r) { return f >= bottom_of(r) && f <= top_of(r); }

/// Every octave of C, named in the gutter.
void draw_octaves(Canvas& canvas, Tuning const& tuning, LaneScale const& scale, double width) {
    for (int octave = 1; octave <= 8; ++octave) {
        auto const c = tuning.pitch(SpelledPitch{'C', 0, octave}).frequency();
        if (!scale.holds(c)) continue;
        double const y = scale.y(c);
        canvas.line({0, y}, {width, y}, {.width = 0.5, .color = ink::hair});
        if (y > 4 && y < scale.height - 2)
            canvas.write({-4, y + 2.6}, SpelledPitch{'C', 0, octave}.str(), plain(type::small, ink::soft),
                         Align::right);
    }
}

void draw_bands(Canvas& canvas, plan::Plan const& plan, LaneScale const& scale, Sounding const& s) {
    auto const bands = bands_of(plan, s.note);
    if (!bands) return;
    auto const& decision = *plan.notes[s.note].decision;
    band(canvas, scale, bands->r2, s.from, s.to, ink::second, ink::second_wash, true, {});
    band(canvas, scale, bands->r1, s.from, s.to, ink::first, ink::first_wash, false, decision.zone);
}

/// fo and 2fo strong, the others thin.
Pen pen_of(Harmonic harmonic) {
    int const n = harmonic.number;
    return {.width = n == 1   ? 1.3
                     : n == 2 ? 0.95
                              : 0.45,
            .color = n <= 2   ? ink::black
                     : n <= 6 ? ink::soft
                              : ink::rule};
}

/// Whether a higher harmonic matters: it lies in a band, or within a minor third of one. The others are a
/// forest in which a low voice's bands are lost.
bool matters(Frequency f, std::optional<Bands> const& bands) {
    constexpr double third = 1.1892; // 2^(3/12)
    if (!bands) return false;
    auto const near = [&](Resonance const& r) { return f * third >= bottom_of(r) && f <= third * top_of(r); };
    return near(bands->r1) || near(bands->r2);
}

/// Of one note; fo and 2fo are joined to those of the note before, where that ends as this one begins.
void draw_harmonics(Canvas& canvas, plan::Plan const& plan, LaneScale const& scale, Sounding const& s,
                    Sounding const* before) {
    auto const& passage = plan.passage;
    auto const bands = bands_of(plan, s.note);
    for (int n = 1; n <= most_in_lane; ++n) {
        auto const f = frequency_of(Harmonic{n}, passage.notes[s.note].pitch);
        if (!scale.holds(f)) break;
        if (n > 2 && !matters(f, bands)) continue;
        double const y = scale.y(f);
        auto const pen = pen_of(Harmonic{n});
        canvas.line({s.from, y}, {s.to, y}, pen);
        if (!before || std::abs(s.from - before->to) >= 0.5 || n > 2) continue;
        auto const left = frequency_of(Harmonic{n}, passage.notes[before->note].pitch);
        if (scale.holds(left))
            canvas.line({s.from, scale.y(left)}, {s.from, y}, {.width = pen.width * 0.6, .color = pen.color});
    }
}

/// Dots where a harmonic lies in a band.
void draw_meetings(Canvas& canvas, Pitch pitch, LaneScale const& scale, Sounding const& s,
                   Bands const& bands) {
    double const x = std::min(s.head, s.to - 2);
    for (int n = 1; n <= most_in_lane; ++n) {
        auto const f = frequency_of(Harmonic{n}, pitch);
        if (!scale.holds(f)) break;
        bool const first = within(f, bands.r1), second = within(f, bands.r2);
        if (!first && !second) continue;
        double const radius = first && n <= 2 ? 2.5 : 1.55;
        canvas.fill(Path().circle({x, scale.y(f)}, radius + 0.7), ink::white);
        canvas.fill(Path().circle({x, scale.y(f)}, radius), ink::black);
    }
}

/// What a modification aims at, and where harmonics meet the bands.
void draw_aims(Canvas& canvas, plan::Plan const& plan, LaneScale const& scale, Sounding const& s) {
    auto const bands = bands_of(plan, s.note);
    if (!bands) return;
    if (bands->aimed) {
        auto const& target = plan.notes[s.note].decision->target;
        aim(canvas, scale, bands->r1, target.r1, s.from, s.to);
        aim(canvas, scale, bands->r2, target.r2, s.from, s.to);
    }
    draw_meetings(canvas, plan.passage.notes[s.note].pitch, scale, s, *bands);
}

void draw_rail(Canvas& canvas, plan::Plan const& plan, LaneScale const& scale, Sounding const& s) {
    auto const& d = plan.notes[s.note].decision;
    if (!d) return;
    Box const box{s.from, scale.height + 2, s.to - s.from, rail_height - 2};
    fill_zone(canvas, box, d->zone);
    canvas.stroke(Path().rectangle(box), {.width = 0.45, .color = ink::first});
}

/// In the room under clef and key: the harmonics of the first note.
void name_harmonics(Canvas& canvas, Passage const& passage, LaneScale const& scale, Sounding const& first) {
    constexpr double names = 16; // the room they need
    if (first.from <= names) return;
    double last_y = 1e9;
    for (int n = 1; n <= 2; ++n) {
        auto const f = frequency_of(Harmonic{n}, passage.notes[first.note].pitch);
        if (!scale.holds(f)) break;
        double const y = scale.y(f) + 2.4;
        if (last_y - y < 8) continue;
        canvas.write({first.from - 3, y}, Harmonic{n}.str(), plain(type::small), Align::right);
        last_y = y;
    }
}

/// At the end of the lane: the bands of the last note that has some.
void name_bands(Canvas& canvas, plan::Plan const& plan, std::vector<Sounding> const& soundings,
                LaneScale const& scale, double width) {
    for (auto s = soundings.rbegin(); s != soundings.rend(); ++s) {
        auto const bands = bands_of(plan, s->note);
        if (!bands) continue;
        double const y1 = scale.y(bands->r1.centre) + 2.4, y2 = scale.y(bands->r2.centre) + 2.4;
        canvas.write({width + 3, y1}, "fR1", plain(type::small, ink::first));
        if (std::abs(y1 - y2) > 8) canvas.write({width + 3, y2}, "fR2", plain(type::small, ink::second));
        return;
    }
}

} // namespace

double LaneScale::y(Frequency f) const {
    double const hz = std::clamp(in_hertz(f), low_hz, high_hz);
    return height * (1 - std::log(hz / low_hz) / std::log(high_hz / low_hz));
}

bool LaneScale::holds(Frequency f) const { return in_hertz(f) >= low_hz && in_hertz(f) <= high_hz; }

LaneScale lane_scale(plan::Plan const& plan, double height) {
    double low = 1e9, high = 0;
    for (auto const& note : plan.passage.notes) low = std::min(low, in_hertz(note.pitch.frequency()));
    for (auto const& note : plan.notes) {
        if (!note.vowel) continue;
        auto const& r = plan.vowels[*note.vowel].resonances;
        low = std::min(low, in_hertz(bottom_of(r.r1)));
        high = std::max(high, in_hertz(top_of(r.r2)));
    }
    if (high == 0) high = low * 8;
    return {.low_hz = low / 1.09, .high_hz = std::max(high, low * 4) * 1.06, .height = height};
}

void draw_lane(Canvas& canvas, plan::Plan const& plan, std::vector<Sounding> const& soundings,
               LaneScale const& scale, double width) {
    canvas.fill(Box{0, 0, width, scale.height}, ink::wash);
    draw_octaves(canvas, plan.passage.tuning, scale, width);
    for (auto const& s : soundings) draw_bands(canvas, plan, scale, s);
    Sounding const* before = nullptr;
    for (auto const& s : soundings) {
        draw_harmonics(canvas, plan, scale, s, before);
        before = &s;
    }
    for (auto const& s : soundings) draw_aims(canvas, plan, scale, s);
    for (auto const& s : soundings) draw_rail(canvas, plan, scale, s);
    if (soundings.empty()) return;
    name_harmonics(canvas, plan.passage, scale, soundings.front());
    name_bands(canvas, plan, soundings, scale, width);
}

} // namespace vowelway::chart
