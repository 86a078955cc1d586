// SPDX-License-Identifier: MIT
// Voices compared: for each vowel, front to back, where each voice turns and meets.
#include "chart/charts/charts.hpp"
#include "chart/page/front.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/pitch_axis.hpp"
#include "core/ranges.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace vowelway::chart {
namespace {

constexpr std::string_view sentence =
    "For every vowel, front to back: the pitch at which each voice turns (2fo = fR1, filled) and meets it "
    "(fo = fR1, "
    "open), with the uncertainty of each; the upright bars at the left are the handbooks' passaggio.";
constexpr std::size_t most_voices = 8; ///< more do not fit a page; the rest is left to the table
constexpr double crowded = 4.7;        ///< least room between two voices

/// A mark of its own shape for each voice; ink alone would not tell them apart in grey.
void voice_mark(Canvas& canvas, Point c, double r, std::size_t voice, bool filled) {
    Path shape;
    auto const polygon = [&](int corners, double turn) {
        for (int i = 0; i < corners; ++i) {
            double const angle = (turn + i * 360.0 / corners) * 3.14159265358979 / 180;
            Point const at{c.x + r * 1.15 * std::sin(angle), c.y - r * 1.15 * std::cos(angle)};
            if (i == 0)
                shape.move(at);
            else
                shape.line(at);
        }
        shape.close();
    };
    switch (voice % most_voices) {
    case 0:
        shape.circle(c, r * 0.95);
        break;
    case 1:
        shape.rectangle({c.x - r * 0.88, c.y - r * 0.88, 1.76 * r, 1.76 * r});
        break;
    case 2:
        polygon(3, 0);
        break;
    case 3:
        polygon(4, 0);
        break;
    case 4:
        polygon(3, 180);
        break;
    case 5:
        polygon(6, 0);
        break;
    case 6:
        shape.rectangle({c.x - r * 1.1, c.y - r * 0.5, 2.2 * r, r});
        break;
    default:
        shape.rectangle({c.x - r * 0.5, c.y - r * 1.1, r, 2.2 * r});
        break;
    }
    canvas.fill(shape, filled ? ink::black : ink::white);
    canvas.stroke(shape, {.width = 0.8, .color = ink::black});
}

/// As short as it is clear: where all are averages, the voice type says it.
std::string name_of(Singer const& singer, bool all_average) {
    if (all_average && singer.voice != VoiceType::other) return std::string(to_string(singer.voice));
    bool const told = !singer.average || singer.name.find("verage") != std::string::npos;
    return told ? singer.name : singer.name + " (average)";
}

void interval(Canvas& canvas, PitchAxis const& axis, double x, plan::Crossing const& c, std::size_t voice,
              bool filled) {
    double const top = axis.clamped(c.pitch + c.sd), bottom = axis.clamped(c.pitch - c.sd);
    Pen const pen{.width = filled ? 1.1 : 0.8, .color = filled ? ink::first : ink::soft};
    canvas.line({x, top}, {x, bottom}, pen);
    for (double const end : {top, bottom})
        canvas.line({x - 1.6, end}, {x + 1.6, end}, {.width = 0.7, .color = pen.color});
    voice_mark(canvas, {x, axis.y(c.pitch)}, 2.3, voice, filled);
}

std::string sounding(Tuning const& tuning, plan::Crossing const& c) {
    return fmt::format("{} ±{:.0f}", tuning.name(c.pitch).pitch.str(),
                       std::max(1.0, std::round(in_semitones(c.sd))));
}

/// The axis over all that is shown, with a semitone to spare.
PitchAxis axis_of(plan::Comparison const& comparison, std::size_t voices, Tuning const& tuning) {
    double low = 200, high = 0;
    auto const take = [&](double key) {
        low = std::min(low, key);
        high = std::max(high, key);
    };
    for (auto const& row : comparison.rows)
        for (std::size_t v = 0; v < std::min(voices, row.of.size()); ++v) {
            if (!row.of[v]) continue;
            for (auto const* c : {&row.of[v]->turning, &row.of[v]->meeting}) {
                take(tuning.key_number((c->pitch + c->sd).frequency()));
                take(tuning.key_number((c->pitch - c->sd).frequency()));
            }
        }
    for (std::size_t v = 0; v < voices; ++v)
        if (auto const p = plan::generic_passaggio(comparison.singers[v].voice)) {
            take(p->first.key_number());
            take(p->second.key_number());
        }
    return {.tuning = tuning, .low = std::floor(low) - 1, .high = std::ceil(high) + 1};
}

bool all_average(plan::Comparison const& comparison) {
    return ranges::all_of(comparison.singers, &Singer::average);
}

double legend(Canvas& canvas, plan::Comparison const& comparison, std::size_t voices, double y,
              double width) {
    auto const style = plain(type::body);
    double x = 0;
    y += 10;
    for (std::size_t v = 0; v < voices; ++v) {
        auto const name = fitted(canvas.measurer(), name_of(comparison.singers[v], all_average(comparison)),
                                 style, width - 20);
        double const need = 12 + canvas.measurer().measure(name, style).advance;
        if (x > 0 && x + need > width) x = 0, y += 13.5;
        voice_mark(canvas, {x + 4, y - 3}, 3.2, v, true);
        canvas.write({x + 12, y}, name, style);
        x += need + 14;
    }
    y += 13;
    canvas.write({0, y},
                 fitted(canvas.measurer(), fmt::format("passaggio: {}", plan::generic_passaggio_label),
                        plain(type::small, ink::soft), width),
                 plain(type::small, ink::soft));
    return y + 5;
}

/// Turning points in words; of two voices also how far apart they lie, bold where beyond their uncertainty.
double table(Canvas& canvas, plan::Comparison const& comparison, std::size_t voices, Tuning const& tuning,
             double y, double width) {
    bool const two = voices == 2;
    std::size_t const columns = voices + (two ? 1 : 0);
    double const first = 34, column = std::min(110.0, (width - first) / static_cast<double>(columns));
    auto const style = plain(columns > 6 ? type::small : type::label);
    auto const& m = canvas.measurer();
    canvas.write({0, y + 10}, "Turning points", bold(type::heading));
    canvas.write({m.measure("Turning points", bold(type::heading)).advance + 8, y + 10},
                 "± in semitones; the meeting lies an octave above", plain(type::small, ink::soft));
    y += 23;
    for (std::size_t v = 0; v < voices; ++v) {
        double const x = first + column * static_cast<double>(v);
        voice_mark(canvas, {x + 3, y - 3}, 2.8, v, true);
        canvas.write({x + 9, y},
                     fitted(m, name_of(comparison.singers[v], all_average(comparison)), style, column - 13),
                     style);
    }
    if (two)
        canvas.write({first + column * 2, y}, fitted(m, "second above first", style, column + 40), style);
    y += 3;
    canvas.line({0, y}, {width, y}, {.width = 0.8, .color = ink::black});
    for (auto const& row : comparison.rows) {
        y += 12;
        canvas.write({0, y}, slashed(row.vowel), plain(type::body));
        for (std::size_t v = 0; v < voices; ++v) {
            if (v >= row.of.size() || !row.of[v]) continue;
            auto const text =
                sounding(tuning, row.of[v]->turning) + (row.of[v]->resonances.estimated ? " e" : "");
            canvas.write({first + 9 + column * static_cast<double>(v), y},
                         fitted(m, text, style, column - 11), style);
        }
        if (two && !row.differences.empty()) {
            auto const& d = row.differences.front();
            bool const sure = plan::clear(d.p_r1_higher);
            auto const text = fmt::format("{:+.1f} ±{:.1f}{}", in_semitones(d.r1), in_semitones(d.r1_sd),
                                          sure ? "" : "  (may be chance)");
            canvas.write({first + column * 2, y}, text,
                         sure ? bold(type::label) : plain(type::label, ink::soft));
        }
        canvas.line({0, y + 3}, {width, y + 3}, {.width = 0.35, .color = ink::rule});
    }
    bool const guessed = ranges::any_of(comparison.rows, [](plan::ComparedRow const& r) {
        return ranges::any_of(r.of, [](auto const& v) { return v && v->resonances.estimated; });
    });
    if (guessed) canvas.write({0, y += 13}, "e: estimated, not measured", plain(type::small, ink::soft));
    return y + 6;
}

} // namespace

std::vector<Page> voices_compared(plan::Comparison const& comparison, Size paper,
                                  TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side;
    std::size_t const voices = std::min(most_voices, comparison.singers.size());
    auto const tuning = comparison.singers.front().tuning;
    std::string who;
    bool const average = all_average(comparison);
    for (std::size_t v = 0; v < voices; ++v)
        who += (v == 0 ? "" : ", ") + name_of(comparison.singers[v], average);
    if (voices < comparison.singers.size())
        who += fmt::format("; {} more in the table form", comparison.singers.size() - voices);
    Head const head{.title = "Voices compared",
                    .aside = {},
                    .who = who,
                    .how = {},
                    .source = average ? std::string(average_voice_notice) : std::string{},
                    .average = average,
                    .sentence = std::string(sentence)};

    // Measure: what stands above and below the picture; the picture gets the rest, the rows in parts.
    Drawing above(measurer), below(measurer), words(measurer);
    double const above_height = draw_title(above, head, width),
                 legend_height = legend(below, comparison, voices, 0, width);
    double const table_height = table(words, comparison, voices, tuning, 0, width);
    double const page_height = paper.height - margin_top - margin_bottom;
    bool const words_fit = above_height + legend_height + table_height + 260 < page_height;

    // Assign: vowels to pages, so that the voices of one vowel keep their distance.
    double const room = width - PitchAxis::room_left - PitchAxis::room_right;
    double const least =
        std::max(38.0, crowded * static_cast<double>(voices) + 8); // 38: names beside each other
    std::size_t const fit =
        std::max<std::size_t>(1, static_cast<std::size_t>(room / least) - 1); // one for the handbooks
    std::size_t const count = comparison.rows.size(), pictures = (count + fit - 1) / fit,
                      per_page = (count + pictures - 1) / pictures;
    std::size_t const pages = pictures + (words_fit && pictures == 1 ? 0 : 1);

    std::vector<Page> result;
    for (std::size_t p = 0; p < pictures; ++p) {
        Page page{paper, Drawing(measurer)};
        auto& canvas = page.drawing;
        draw_margins(canvas, head, "voices compared", paper, p + 1, pages);
        if (p == 0) above.replay(canvas, {margin_side, margin_top});
        double const names = margin_top + (p == 0 ? above_height : 0) + 16;
        auto axis = axis_of(comparison, voices, tuning);
        axis.top = names + 8;
        axis.bottom = paper.height - margin_bottom - 14 - legend_height - (pages == 1 ? table_height + 6 : 0);
        below.replay(canvas, {margin_side, axis.bottom + 8});
        if (pages == 1) words.replay(canvas, {margin_side, axis.bottom + 14 + legend_height});

        std::size_t const from = p * per_page, to = std::min(count, from + per_page);
        double const left = margin_side + PitchAxis::room_left,
                     group = std::min(room / static_cast<double>(per_page + 1), 90.0);
        double const right = left + group * static_cast<double>(to - from + 1);
        axis.draw(canvas, left, right);
        canvas.write({right + 2, names}, "Hz", plain(type::small, ink::soft));
        auto const x_of = [&](std::size_t g, std::size_t v) {
            double const step = (group - 8) / static_cast<double>(voices);
            return left + group * static_cast<double>(g) + 4 + step * (static_cast<double>(v) + 0.5);
        };
        canvas.write({left + group / 2, names}, "handbooks", slanted(type::small, ink::soft), Align::centre);
        for (std::size_t v = 0; v < voices; ++v) {
            auto const passaggio = plan::generic_passaggio(comparison.singers[v].voice);
            if (!passaggio) continue;
            double const top = axis.y(passaggio->second.key_number()),
                         bottom = axis.y(passaggio->first.key_number()), x = x_of(0, v);
            Box const bar{x - 2.2, top, 4.4, bottom - top};
            canvas.fill(bar, ink::white);
            hatch(canvas, bar, 2.0, {.width = 0.6, .color = ink::soft});
            canvas.stroke(Path().rectangle(bar), {.width = 0.6, .color = ink::soft});
            voice_mark(canvas, {x, top - 5}, 2.2, v, true);
        }
        for (std::size_t r = from; r < to; ++r) {
            auto const& row = comparison.rows[r];
            std::size_t const g = r - from + 1;
            double const edge = left + group * static_cast<double>(g);
            canvas.line({edge, axis.top}, {edge, axis.bottom}, {.width = 0.5, .color = ink::rule});
            canvas.write({edge + group / 2, names}, slashed(row.vowel), bold(14), Align::centre);
            for (std::size_t v = 0; v < std::min(voices, row.of.size()); ++v) {
                if (!row.of[v]) continue;
                interval(canvas, axis, x_of(g, v), row.of[v]->turning, v, true);
                interval(canvas, axis, x_of(g, v), row.of[v]->meeting, v, false);
            }
        }
        canvas.stroke(Path().rectangle({left, axis.top, right - left, axis.bottom - axis.top}),
                      {.width = 0.6, .color = ink::soft});
        result.push_back(std::move(page));
    }
    if (pages > pictures) {
        Page page{paper, Drawing(measurer)};
        draw_margins(page.drawing, head, "voices compared", paper, pages, pages);
        words.replay(page.drawing, {margin_side, margin_top});
        result.push_back(std::move(page));
    }
    return result;
}

} // namespace vowelway::chart
