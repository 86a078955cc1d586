// SPDX-License-Identifier: MIT
// The passage sheet. Passes: measure the bars -> assign them to systems -> draw each as a block ->
// assign blocks to pages -> place and draw.
#include "chart/charts.hpp"
#include "chart/front.hpp"
#include "chart/style.hpp"
#include "chart/system_block.hpp"

#include <algorithm>

namespace vowelway::chart {
namespace {

constexpr std::string_view sentence =
    "Under the music: the voice's harmonics (lines) against this singer's resonances (bands). Where a harmonic enters "
    "a band the sound of the vowel changes; the last row says what to do.";
constexpr std::size_t most_watched = 8;
constexpr double between = 13, most_stretch = 24;      // vertical room between blocks
constexpr double least_lane = 80, most_lane = 116;     // height of the resonance lane

struct Sheet {
    std::vector<std::size_t> blocks;
    double used = 0;
};

/// Blocks to pages in order; the first page has `front` taken already.
std::vector<Sheet> assign(std::vector<Block> const& blocks, double lane, double front, double page_height) {
    std::vector<Sheet> sheets{{{}, front}};
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        double const height = blocks[i].height(lane) + between;
        bool const full = sheets.back().used + height > page_height + between;
        if (full && (!sheets.back().blocks.empty() || sheets.size() == 1)) sheets.push_back({});
        sheets.back().blocks.push_back(i);
        sheets.back().used += height;
    }
    return sheets;
}

/// The tallest lane that takes no more pages than the lowest.
double lane_that_fits(std::vector<Block> const& blocks, double front, double page_height) {
    auto const least = assign(blocks, least_lane, front, page_height).size();
    double lane = most_lane;
    while (lane > least_lane && assign(blocks, lane, front, page_height).size() > least) lane -= 2;
    return std::max(lane, least_lane);
}

} // namespace

std::vector<Page> passage_sheet(Plan const& plan, Size paper, TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side;
    double const staff_width = width - gutter_left - gutter_right;

    auto const staff = staff_to_draw(plan.passage);
    auto const systems = assign_systems(measure_bars(plan, staff, measurer), staff_width);
    auto const watched = notes_to_watch(plan, most_watched);

    BlockMaker maker(plan, staff, watched, measurer);
    std::vector<Block> blocks;
    blocks.reserve(systems.size());
    for (auto const& system : systems) blocks.push_back(maker.make(system));

    Drawing front(measurer);
    double front_height = draw_title(front, plan, sentence, width);
    front_height = draw_watch(front, plan, watched, front_height, width);
    front_height = draw_lane_legend(front, front_height, width) + 6;

    double const page_height = paper.height - margin_top - margin_bottom;
    double const lane = lane_that_fits(blocks, front_height, page_height);
    auto const scale = lane_scale(plan, lane);
    auto const sheets = assign(blocks, lane, front_height, page_height);

    // Place: what is left over goes between the blocks.
    std::vector<Page> pages;
    for (std::size_t s = 0; s < sheets.size(); ++s) {
        auto const& sheet = sheets[s];
        Page page{paper, Drawing(measurer)};
        draw_margins(page.drawing, plan, "passage sheet", paper, s + 1, sheets.size());
        double y = margin_top;
        if (s == 0) {
            front.replay(page.drawing, {margin_side, margin_top});
            y += front_height;
        }
        bool const last = s + 1 == sheets.size();
        double const spare = std::max(0.0, page_height + between - sheet.used);
        double const gaps = std::max<double>(1, static_cast<double>(sheet.blocks.size()) - (s == 0 ? 0 : 1));
        double const stretch = std::min(last ? 8.0 : most_stretch, spare / gaps);
        bool opening = s != 0;
        for (auto const i : sheet.blocks) {
            if (!opening) y += stretch;
            opening = false;
            blocks[i].draw(page.drawing, plan, scale, {margin_side + gutter_left, y});
            y += blocks[i].height(lane) + between;
        }
        pages.push_back(std::move(page));
    }
    return pages;
}

} // namespace vowelway::chart
