// SPDX-License-Identifier: MIT
// The passage sheet. Passes: measure the bars -> assign them to systems -> draw each as a block ->
// assign blocks to pages -> place and draw.
#include "chart/canvas/style.hpp"
#include "chart/charts/charts.hpp"
#include "chart/page/remarks.hpp"
#include "chart/page/sheet_front.hpp"
#include "chart/page/system_block.hpp"
#include "chart/page/watch.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway::chart {
namespace {

constexpr std::string_view sentence_of_sheet =
    to_word("The voice's harmonics (lines) meet the resonances of the vowel "
            "(bands); where they do, its sound changes.");
constexpr double between = 13, most_stretch = 24;  // vertical room between blocks
constexpr double least_lane = 72, most_lane = 150; // height of the resonance lane

struct Sheet {
    std::vector<std::size_t> blocks;
    double used = 0;
};

/// Blocks to pages in order, each below the heading of its page.
std::vector<Sheet> assign(std::vector<Block> const& blocks, double lane, std::vector<Heading> const& headings,
                          double page_height) {
    std::vector<Sheet> sheets;
    auto const begin = [&] {
        auto const page = sheets.size();
        sheets.push_back({{}, page < headings.size() ? headings[page].height : 0.0});
    };
    begin();
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        double const height = blocks[i].height(lane) + between;
        bool const full = sheets.back().used + height > page_height + between;
        if (full && (!sheets.back().blocks.empty() || sheets.size() == 1)) begin();
        sheets.back().blocks.push_back(i);
        sheets.back().used += height;
    }
    return sheets;
}

} // namespace

std::vector<Page> passage_sheet(plan::Plan const& plan, Size paper, TextMeasurer const& measurer,
                                bool numbers) {
    double const width = paper.width - 2 * margin_side;
    double const staff_width = width - gutter_left - gutter_right;

    auto const staff = staff_to_draw(plan.passage);
    auto const systems = assign_systems(measure_bars(plan, staff, measurer), staff_width);
    auto const pencil = plan::pencil_of(plan);
    auto const watched = numbers_of(pencil);

    BlockMaker maker(plan, staff, watched, measurer);
    std::vector<Block> blocks;
    blocks.reserve(systems.size());
    for (auto const& system : systems) blocks.push_back(maker.make(system));

    auto const title = head_of(plan, reworded(sentence_of_sheet));
    double const page_height = paper.height - margin_top - margin_bottom;
    auto const headings =
        headings_of(plan, pencil, title, {width, page_height},
                    blocks.empty() ? 0 : blocks.front().height(least_lane), measurer, numbers);
    auto const sheets = assign(blocks, least_lane, headings, page_height);

    // Place: what is left over makes the lanes taller, then goes between the blocks.
    std::vector<Page> pages;
    for (std::size_t s = 0; s < sheets.size(); ++s) {
        auto const& sheet = sheets[s];
        Page page{paper, Drawing(measurer)};
        draw_margins(page.drawing, title, worded("passage sheet"), paper, s + 1, sheets.size());
        double y = margin_top;
        bool const headed = s < headings.size();
        if (headed) {
            headings[s].drawing.replay(page.drawing, {margin_side, margin_top});
            y += headings[s].height;
        }
        bool const last = s + 1 == sheets.size();
        double spare = std::max(0.0, page_height + between - sheet.used);
        double const many = std::max<double>(1, static_cast<double>(sheet.blocks.size()));
        double const lane = std::min(most_lane, least_lane + spare / many);
        spare -= (lane - least_lane) * many;
        auto const scale = lane_scale(plan, lane);
        double const gaps = std::max<double>(1, static_cast<double>(sheet.blocks.size()) - (headed ? 0 : 1));
        double const stretch = std::min(last ? 8.0 : most_stretch, spare / gaps);
        bool opening = !headed;
        for (auto const i : sheet.blocks) {
            if (!opening) y += stretch;
            opening = false;
            blocks[i].draw(page.drawing, plan, scale, {margin_side + gutter_left, y});
            double const left = margin_side + gutter_left;
            for (auto const& one : blocks[i].soundings)
                page.notes.push_back(
                    {one.note, {left + one.from, y, one.to - one.from, blocks[i].height(lane)}, one.begins});
            y += blocks[i].height(lane) + between;
        }
        if (last)
            draw_remarks(page.drawing, plan, margin_side, y + 6, width, paper.height - margin_bottom - 4);
        pages.push_back(std::move(page));
    }
    return pages;
}

} // namespace vowelway::chart
