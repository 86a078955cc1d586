// SPDX-License-Identifier: MIT
// A singer in a teacher's folder: one page.
#include "chart/canvas/style.hpp"
#include "chart/charts/charts.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/one_page.hpp"
#include "chart/page/text.hpp"
#include "chart/page/title.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace vowelway::chart {
namespace {

constexpr double studio_line = 12.5, bar = 70;

/// Shares of hold, drift and change, side by side: blank, hatched, solid.
void draw_shares(Canvas& canvas, Point at, plan::TimeShares const& time) {
    Box const whole{at.x, at.y - 7, bar, 8};
    double const drift = bar * time.migrate, change = bar * time.modify;
    Box const hatched{whole.right() - change - drift, whole.top, drift, whole.height};
    hatch(canvas, hatched, 2.2, {.width = 0.45, .color = ink::migrate});
    canvas.fill(Box{whole.right() - change, whole.top, change, whole.height}, ink::modify);
    canvas.stroke(Path().rectangle(whole), {.width = 0.5, .color = ink::soft});
}

double draw_song(Canvas& canvas, plan::KeysPlan const& song, double y, double width) {
    auto const& m = canvas.measurer();
    auto const& best = song.recommended();
    double const key_x = width - 205;
    y += studio_line + 3;
    auto const title = song.passage.title.empty() ? worded("Song") : song.passage.title;
    canvas.write({0, y}, fitted(m, title, bold(type::body), key_x - 8), bold(type::body));
    canvas.write({key_x, y}, fitted(m, plan::words_of_key(best.semitones), plain(type::body), 125),
                 plain(type::body));
    draw_shares(canvas, {width - bar, y}, best.demand.time);
    y += studio_line - 1;
    auto const why = plan::against_as_written(song, plan::key_term_names.size());
    auto const below = why.empty() ? song.passage.composer : worded("as written: {0}", why);
    canvas.write({0, y}, fitted(m, below, plain(type::label, ink::soft), key_x - 8),
                 plain(type::label, ink::soft));
    canvas.write({key_x, y}, best.low.str() + "-" + best.high.str(), plain(type::label, ink::soft));
    canvas.line({0, y + 4}, {width, y + 4}, {.width = 0.3, .color = ink::hair});
    return y + 3;
}

double draw_sheet(Canvas& canvas, StudioPage const& page, Head const& head, double width) {
    double y = draw_title(canvas, head, width) - 4;
    for (auto const& line : page.known)
        y = paragraph(canvas, 0, y, width, line, plain(type::body), studio_line);
    if (page.songs.empty()) return y;
    y = draw_heading(canvas, 0, y + 10, width, worded("Songs, in the key that suits"));
    for (auto const& song : page.songs) y = draw_song(canvas, song, y, width);
    auto const legend = worded("the bar: time with nothing to do (blank), where the vowel drifts (hatched), "
                               "where the shape changes (solid)");
    return paragraph(canvas, 0, y, width, legend, plain(type::label, ink::soft), 11) + 4;
}

} // namespace

Page studio_page(StudioPage const& page, Size paper, TextMeasurer const& measurer) {
    auto head = head_of(page.singer, page.songs.empty() ? std::string() : page.songs.front().technique);
    head.title = page.singer.name;
    head.who = std::string(reworded(to_string(page.singer.voice)));
    return on_one_page(head, worded("for the lesson"), paper, measurer,
                       [&](Canvas& canvas, double width) { return draw_sheet(canvas, page, head, width); });
}

} // namespace vowelway::chart
