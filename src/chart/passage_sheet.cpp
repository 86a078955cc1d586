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
    "Under each line of music stand the voice's harmonics (lines) and this singer's resonances (bands): where a "
    "harmonic enters a band the sound of the vowel changes, and the last row says what to do about it.";
constexpr std::size_t most_watched = 8;
constexpr double between = 12, most_stretch = 26; // vertical room between blocks

} // namespace

std::vector<Page> passage_sheet(Plan const& plan, Size paper, TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side;
    double const staff_width = width - gutter_left - gutter_right;
    double const lane_height = std::clamp(paper.height * 0.107, 74.0, 92.0);

    auto const staff = staff_to_draw(plan.passage);
    auto const systems = assign_systems(measure_bars(plan, staff, measurer), staff_width);
    auto const watched = notes_to_watch(plan, most_watched);

    BlockMaker maker(plan, staff, watched, lane_scale(plan, lane_height), measurer);
    std::vector<Block> blocks;
    blocks.reserve(systems.size());
    for (auto const& system : systems) blocks.push_back(maker.make(system));

    Drawing front(measurer);
    double front_height = draw_title(front, plan, "passage sheet", sentence, width);
    front_height = draw_watch(front, plan, watched, front_height, width);
    front_height = draw_lane_legend(front, front_height, width) + 6;

    // Assign blocks to pages.
    double const page_height = paper.height - margin_top - margin_bottom;
    struct Sheet {
        std::vector<std::size_t> blocks;
        double used = 0;
    };
    std::vector<Sheet> sheets{{{}, front_height}};
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        double const height = blocks[i].bottom - blocks[i].top + between;
        if (sheets.back().used + height > page_height + between && (!sheets.back().blocks.empty() || sheets.size() == 1)) sheets.push_back({});
        sheets.back().blocks.push_back(i);
        sheets.back().used += height;
    }

    // Place: what is left over goes between the blocks.
    std::vector<Page> pages;
    for (std::size_t s = 0; s < sheets.size(); ++s) {
        auto const& sheet = sheets[s];
        Page page{paper, Drawing(measurer)};
        draw_margins(page.drawing, plan, paper, s + 1, sheets.size());
        double y = margin_top;
        if (s == 0) {
            front.replay(page.drawing, {margin_side, margin_top});
            y += front_height;
        }
        bool const last = s + 1 == sheets.size();
        double const spare = std::max(0.0, page_height + between - sheet.used);
        double const gaps = std::max<double>(1, static_cast<double>(sheet.blocks.size()) - (s == 0 ? 0 : 1));
        double const stretch = last ? std::min(8.0, spare / gaps) : std::min(most_stretch, spare / gaps);
        bool opening = s != 0;
        for (auto const i : sheet.blocks) {
            if (!opening) y += stretch;
            opening = false;
            blocks[i].drawing.replay(page.drawing, {margin_side + gutter_left, y - blocks[i].top});
            y += blocks[i].bottom - blocks[i].top + between;
        }
        pages.push_back(std::move(page));
    }
    return pages;
}

} // namespace vowelway::chart
