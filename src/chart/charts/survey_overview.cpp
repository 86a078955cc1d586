// SPDX-License-Identifier: MIT
// Songs by singers: how much speaks against each, and in which key it is least.
#include "chart/canvas/style.hpp"
#include "chart/charts/charts.hpp"
#include "chart/page/legend.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/title.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::chart {
namespace {

constexpr double row_height = 15, titles = 190, field = 46, largest = 11, heads = 62;
constexpr double most = 0.6; // of need; more is shown as this (our choice)

/// Songs and singers that stand on one page.
struct Window {
    std::size_t first_song, songs, first_singer, singers;
};

std::vector<Window> windows(std::size_t songs, std::size_t singers, double width, double height) {
    auto const across = std::max<std::size_t>(1, static_cast<std::size_t>((width - titles) / field));
    auto const down = std::max<std::size_t>(1, static_cast<std::size_t>(height / row_height));
    std::vector<Window> out;
    for (std::size_t c = 0; c < singers; c += across)
        for (std::size_t r = 0; r < songs; r += down)
            out.push_back({r, std::min(down, songs - r), c, std::min(across, singers - c)});
    return out;
}

/// An area that grows with the need, the same in every survey.
void draw_need(Canvas& canvas, Point centre, double need) {
    double const side = std::max(1.0, largest * std::sqrt(std::clamp(need / most, 0.0, 1.0)));
    canvas.fill(Box{centre.x - side / 2, centre.y - side / 2, side, side}, ink::black);
}

std::string key_of(int semitones) { return semitones == 0 ? "=" : fmt::format("{:+}", semitones); }

/// A name over its column, in as many lines as there is room for.
void draw_singer(Canvas& canvas, std::string const& name, double x, double bottom) {
    auto const style = plain(type::small);
    auto lines = wrapped(canvas.measurer(), name, style, field - 4);
    if (lines.size() > 5) lines.resize(5);
    double y = bottom - 9 * static_cast<double>(lines.size() - 1);
    for (auto const& line : lines) {
        canvas.write({x, y}, fitted(canvas.measurer(), line, style, field - 3), style);
        y += 9;
    }
}

void draw_song(Canvas& canvas, plan::OverviewSong const& song, Window const& window, double y) {
    auto const& m = canvas.measurer();
    auto const title = song.title.empty() ? song.song : song.title;
    canvas.write({0, y}, fitted(m, title, plain(type::label), titles - 8), plain(type::label));
    for (std::size_t c = 0; c < window.singers; ++c) {
        auto const& cell = song.of[window.first_singer + c];
        if (!cell) continue;
        double const x = titles + field * static_cast<double>(c);
        draw_need(canvas, {x + 8, y - 3}, cell->need);
        canvas.write({x + 18, y}, key_of(cell->best), plain(type::small, ink::soft));
    }
    canvas.line({0, y + 4}, {titles + field * static_cast<double>(window.singers), y + 4},
                {.width = 0.3, .color = ink::hair});
}

double draw_legend(Canvas& canvas, double y, double width) {
    Legend legend(canvas, y, width, 14);
    for (double const need : {0.1, 0.3, most})
        legend.entry(12,
                     need < most ? fmt::format("{:.1f}", need)
                                 : worded("{0} or more", fmt::format("{:.1f}", need)),
                     [&](double x, double base) {
                         draw_need(canvas, {x + 6, base - 3}, need);
                     });
    legend.entry(0,
                 worded("what speaks against the song, for a second of it, in the key that suits best (1: "
                        "every vowel lost)"),
                 [](double, double) {});
    legend.entry(14, worded("that key: semitones from where it stands; = as it stands"),
                 [&](double x, double base) {
                     canvas.write({x, base}, "+2", plain(type::small, ink::soft));
                 });
    return legend.y();
}

} // namespace

std::vector<Page> survey_overview(plan::Overview const& overview, Size paper, TextMeasurer const& measurer) {
    Head head;
    head.title = worded("Songs and singers");
    head.who = worded("{0} songs, {1} singers", overview.songs.size(), overview.singers.size());
    head.how = worded("technique: {0}", overview.technique);
    head.sentence = worded("The song that asks least first. A proposal, never an order: how the voice feels "
                           "on the day decides.");
    double const width = paper.width - 2 * margin_side, height = paper.height - margin_top - margin_bottom;
    Drawing sample(measurer);
    double const below = draw_title(sample, head, width) + heads;
    auto const pages = windows(overview.songs.size(), overview.singers.size(), width, height - below - 40);
    std::vector<Page> out;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        Drawing sheet(measurer);
        double y = draw_title(sheet, head, width) + heads - 8;
        for (std::size_t c = 0; c < pages[i].singers; ++c)
            draw_singer(sheet, std::string(reworded(overview.singers[pages[i].first_singer + c])),
                        titles + field * static_cast<double>(c), y);
        sheet.line({0, y + 4}, {width, y + 4}, {.width = 0.8, .color = ink::black});
        for (std::size_t r = 0; r < pages[i].songs; ++r)
            draw_song(sheet, overview.songs[pages[i].first_song + r], pages[i], y += row_height);
        draw_legend(sheet, y + 20, width);
        Page page{paper, Drawing(measurer)};
        draw_margins(page.drawing, head, worded("survey"), paper, i + 1, pages.size());
        sheet.replay(page.drawing, {margin_side, margin_top});
        out.push_back(std::move(page));
    }
    return out;
}

} // namespace vowelway::chart
