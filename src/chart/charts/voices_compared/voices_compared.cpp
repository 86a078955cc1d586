// SPDX-License-Identifier: MIT
// Voices compared: for each vowel, front to back, where each voice turns and meets.
#include "chart/charts/charts.hpp"
#include "chart/charts/voices_compared/voices.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/pitch_axis.hpp"
#include "chart/page/text.hpp"
#include "chart/page/title.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::chart {
namespace {

constexpr std::string_view sentence_of_voices = to_word(
    "For every vowel, front to back: the pitch at which each voice turns (2fo = fR1, filled) and meets it "
    "(fo = fR1, "
    "open), with the uncertainty of each; the upright bars at the left are the handbooks' passaggio.");
constexpr double crowded = 4.7; // least room between two voices

void interval(Canvas& canvas, PitchAxis const& axis, double x, plan::Crossing const& c, std::size_t voice,
              bool filled) {
    double const top = axis.clamped(c.pitch + c.sd), bottom = axis.clamped(c.pitch - c.sd);
    Pen const pen{.width = filled ? 1.1 : 0.8, .color = filled ? ink::first : ink::soft};
    canvas.line({x, top}, {x, bottom}, pen);
    for (double const end : {top, bottom})
        canvas.line({x - 1.6, end}, {x + 1.6, end}, {.width = 0.7, .color = pen.color});
    draw_voice_mark(canvas, {x, axis.y(c.pitch)}, 2.3, voice, filled);
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

Head title_of(plan::Comparison const& comparison, std::size_t voices) {
    std::string who;
    bool const average = all_average(comparison);
    for (std::size_t v = 0; v < voices; ++v)
        who += (v == 0 ? "" : ", ") + voice_name(comparison.singers[v], average);
    if (voices < comparison.singers.size())
        who += "; " + worded("{0} more in the table form", comparison.singers.size() - voices);
    return {.title = worded("Voices compared"),
            .aside = {},
            .who = who,
            .how = {},
            .source = average ? std::string(reworded(average_voice_notice)) : std::string{},
            .average = average,
            .sentence = std::string(reworded(sentence_of_voices))};
}

/// How the vowels are shared out between pages, so that the voices of one vowel keep their distance.
struct Shares {
    std::size_t pictures = 0, per_page = 0;
};

Shares share_out(std::size_t vowels, std::size_t voices, double room) {
    double const least =
        std::max(38.0, crowded * static_cast<double>(voices) + 8); // 38: names beside each other
    std::size_t const fit =
        std::max<std::size_t>(1, static_cast<std::size_t>(room / least) - 1); // one for the handbooks
    std::size_t const pictures = (vowels + fit - 1) / fit;
    return {pictures, (vowels + pictures - 1) / pictures};
}

/// A picture: a group of columns for the handbooks, then one for each vowel, a column a voice.
struct Picture {
    Canvas& canvas;
    plan::Comparison const& comparison;
    PitchAxis const& axis;
    std::size_t voices;
    double left, group; ///< width of a group
    double names;       ///< baseline of what stands over the groups

    double x_of(std::size_t g, std::size_t voice) const {
        double const step = (group - 8) / static_cast<double>(voices);
        return left + group * static_cast<double>(g) + 4 + step * (static_cast<double>(voice) + 0.5);
    }

    void draw_handbooks() const {
        canvas.write({left + group / 2, names}, worded("handbooks"), slanted(type::small, ink::soft),
                     Align::centre);
        for (std::size_t v = 0; v < voices; ++v) {
            auto const passaggio = plan::generic_passaggio(comparison.singers[v].voice);
            if (!passaggio) continue;
            double const top = axis.y(passaggio->second.key_number()),
                         bottom = axis.y(passaggio->first.key_number()), x = x_of(0, v);
            Box const bar{x - 2.2, top, 4.4, bottom - top};
            canvas.fill(bar, ink::white);
            hatch(canvas, bar, 2.0, {.width = 0.6, .color = ink::soft});
            canvas.stroke(Path().rectangle(bar), {.width = 0.6, .color = ink::soft});
            draw_voice_mark(canvas, {x, top - 5}, 2.2, v, true);
        }
    }

    void draw_vowel(plan::ComparedRow const& row, std::size_t g) const {
        double const edge = left + group * static_cast<double>(g);
        canvas.line({edge, axis.top}, {edge, axis.bottom}, {.width = 0.5, .color = ink::rule});
        canvas.write({edge + group / 2, names}, slashed(row.vowel), bold(14), Align::centre);
        for (std::size_t v = 0; v < std::min(voices, row.of.size()); ++v) {
            if (!row.of[v]) continue;
            interval(canvas, axis, x_of(g, v), row.of[v]->turning, v, true);
            interval(canvas, axis, x_of(g, v), row.of[v]->meeting, v, false);
        }
    }

    void draw(std::size_t from, std::size_t to) const {
        double const right = left + group * static_cast<double>(to - from + 1);
        axis.draw(canvas, left, right);
        canvas.write({right + 2, names}, "Hz", plain(type::small, ink::soft));
        draw_handbooks();
        for (std::size_t r = from; r < to; ++r) draw_vowel(comparison.rows[r], r - from + 1);
        canvas.stroke(Path().rectangle({left, axis.top, right - left, axis.bottom - axis.top}),
                      {.width = 0.6, .color = ink::soft});
    }
};

} // namespace

std::vector<Page> voices_compared(plan::Comparison const& comparison, Size paper,
                                  TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side;
    std::size_t const voices = std::min(most_voices, comparison.singers.size());
    auto const tuning = comparison.singers.front().tuning;
    auto const head = title_of(comparison, voices);

    // Measure: what stands above and below the picture; the picture gets the rest, the rows in parts.
    Drawing above(measurer), below(measurer), words(measurer);
    double const above_height = draw_title(above, head, width),
                 legend_height = draw_voices_legend(below, comparison, voices, 0, width);
    double const table_height = draw_turning_points(words, comparison, voices, tuning, 0, width);
    double const page_height = paper.height - margin_top - margin_bottom;
    bool const words_fit = above_height + legend_height + table_height + 260 < page_height;

    // Assign: vowels to pages.
    double const room = width - PitchAxis::room_left - PitchAxis::room_right;
    std::size_t const count = comparison.rows.size();
    auto const [pictures, per_page] = share_out(count, voices, room);
    std::size_t const pages = pictures + (words_fit && pictures == 1 ? 0 : 1);

    std::vector<Page> result;
    for (std::size_t p = 0; p < pictures; ++p) {
        Page page{paper, Drawing(measurer)};
        auto& canvas = page.drawing;
        draw_margins(canvas, head, worded("voices compared"), paper, p + 1, pages);
        if (p == 0) above.replay(canvas, {margin_side, margin_top});
        double const names = margin_top + (p == 0 ? above_height : 0) + 16;
        auto axis = axis_of(comparison, voices, tuning);
        axis.top = names + 8;
        axis.bottom = paper.height - margin_bottom - 14 - legend_height - (pages == 1 ? table_height + 6 : 0);
        below.replay(canvas, {margin_side, axis.bottom + 8});
        if (pages == 1) words.replay(canvas, {margin_side, axis.bottom + 14 + legend_height});
        Picture const picture{canvas,
                              comparison,
                              axis,
                              voices,
                              margin_side + PitchAxis::room_left,
                              std::min(room / static_cast<double>(per_page + 1), 90.0),
                              names};
        picture.draw(p * per_page, std::min(count, (p + 1) * per_page));
        result.push_back(std::move(page));
    }
    if (pages > pictures) {
        Page page{paper, Drawing(measurer)};
        draw_margins(page.drawing, head, worded("voices compared"), paper, pages, pages);
        words.replay(page.drawing, {margin_side, margin_top});
        result.push_back(std::move(page));
    }
    return result;
}

} // namespace vowelway::chart
