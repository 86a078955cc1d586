// SPDX-License-Identifier: MIT
#include "chart/page/lane_legend.hpp"

#include "chart/page/legend.hpp"
#include "chart/page/marks.hpp"
#include "vowelway/core/wording.hpp"

#include <array>
#include <cmath>

#include <vector>

namespace vowelway::chart {
namespace {

/// What stands in the lanes.
struct Signs {
    std::array<bool, 5> zones{};
    std::array<bool, 3> advice{};
    bool unsure = false; ///< a question mark
    bool dots = false;   ///< a harmonic lies in a band
};

bool in_a_band(Pitch pitch, VowelResonances const& own) {
    auto const within = [&](Resonance const& r) {
        int const n = static_cast<int>(std::lround(r.centre / pitch.frequency()));
        return n > 0 && std::abs(in_hertz(frequency_of(Harmonic{n}, pitch) - r.centre)) <= in_hertz(r.sd);
    };
    return within(own.r1) || within(own.r2);
}

Signs signs_in(std::span<plan::Plan const> plans) {
    Signs out;
    for (auto const& plan : plans)
        for (auto const& n : plan.notes) {
            if (!n.decision || !n.vowel) continue;
            auto const& d = *n.decision;
            out.zones[static_cast<std::size_t>(d.zone.zone)] = true;
            out.advice[static_cast<std::size_t>(d.advice)] = true;
            out.unsure = out.unsure || !is_sure(d);
            out.dots =
                out.dots || in_a_band(plan.passage.notes[n.note].pitch, plan.vowels[*n.vowel].resonances);
        }
    return out;
}

void harmonics(Canvas& canvas, Legend& legend, Signs const& signs) {
    auto const line = [&](Pen const& pen, std::string_view text) {
        legend.entry(16, text, [&](double x, double y) { canvas.line({x, y - 3}, {x + 16, y - 3}, pen); });
    };
    line({.width = 1.3, .color = ink::black}, "fo");
    line({.width = 0.95, .color = ink::black}, "2fo");
    line({.width = 0.45, .color = ink::soft}, worded("3fo and higher, near a band"));
    if (!signs.dots) return;
    legend.entry(9, worded("harmonic in a band"), [&](double x, double y) {
        canvas.fill(Path().circle({x + 4, y - 3}, 2.5), ink::black);
    });
}

void bands(Canvas& canvas, Legend& legend, Signs const& signs) {
    auto const band = [&](Ink wash, Ink edge, std::vector<double> const& dashes, std::string_view text) {
        legend.entry(18, text, [&](double x, double y) {
            canvas.fill(Box{x, y - 8, 18, 9}, wash);
            for (double const side : {y - 8, y + 1})
                canvas.line({x, side}, {x + 18, side},
                            {.width = dashes.empty() ? 1.1 : 0.6, .color = edge, .dashes = dashes});
        });
    };
    band(ink::first_wash, ink::first, {}, worded("fR1 ± its uncertainty"));
    band(ink::second_wash, ink::second, {2.2, 1.4}, "fR2");
    if (!signs.unsure) return;
    legend.entry(6, worded("uncertain"), [&](double x, double y) {
        canvas.write({x, y}, "?", bold(type::label));
    });
}

void zones(Canvas& canvas, Legend& legend, Signs const& signs) {
    auto const zone = [&](plan::Zone which, double p, std::string_view text) {
        if (!signs.zones[static_cast<std::size_t>(which)]) return;
        legend.entry(18, text, [&](double x, double y) {
            Box const box{x, y - 8, 18, 9};
            canvas.fill(box, ink::first_wash);
            fill_zone(canvas, box, {which, p, 0});
            canvas.line({x, box.top}, {box.right(), box.top}, {.width = 0.6, .color = ink::first});
            canvas.line({x, box.bottom()}, {box.right(), box.bottom()}, {.width = 0.6, .color = ink::first});
        });
    };
    zone(plan::Zone::open, 0, worded("open: 2fo below fR1"));
    zone(plan::Zone::turning, 0.6, worded("turning: 2fo passes it"));
    zone(plan::Zone::close, 1, worded("close: 2fo above it"));
    zone(plan::Zone::meeting, 1, worded("meeting: fo at it"));
    zone(plan::Zone::above, 1, worded("above: fo over it"));
}

void advice(Canvas& canvas, Legend& legend, Signs const& signs) {
    auto const shown = [&](plan::Advice advice) { return signs.advice[static_cast<std::size_t>(advice)]; };
    for (auto const advice : {plan::Advice::hold, plan::Advice::migrate, plan::Advice::modify})
        if (shown(advice))
            legend.entry(9, meaning(advice), [&](double x, double y) {
                advice_sign(canvas, {x + 4, y - 3}, 7, advice);
            });
    if (!shown(plan::Advice::modify)) return;
    legend.entry(12, worded("where to move the band"), [&](double x, double y) {
        canvas.line({x, y - 8}, {x + 12, y - 8}, {.width = 1.2, .color = ink::modify});
        canvas.line({x + 6, y}, {x + 6, y - 5}, {.width = 0.9, .color = ink::modify});
        canvas.fill(Path().move({x + 6, y - 7.6}).line({x + 4.2, y - 4.2}).line({x + 7.8, y - 4.2}).close(),
                    ink::modify);
    });
}

} // namespace

double draw_lane_legend(Canvas& canvas, std::span<plan::Plan const> plans, double y, double width) {
    auto const signs = signs_in(plans);
    Legend legend(canvas, y + 9, width, 11);
    harmonics(canvas, legend, signs);
    bands(canvas, legend, signs);
    zones(canvas, legend, signs);
    advice(canvas, legend, signs);
    return legend.y() + 6;
}

} // namespace vowelway::chart
