// SPDX-License-Identifier: MIT
// A card of instructions: a title, a line that stands large, headings and points.
#include "chart/charts/instruction_card.hpp"
#include "chart/canvas/style.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/one_page.hpp"
#include "chart/page/text.hpp"
#include "vowelway/core/wording.hpp"

#include <sstream>

namespace vowelway::chart {
namespace {

struct CardBlock {
    std::string heading;
    std::vector<std::string> points;
};

std::vector<CardBlock> blocks_of(std::string const& text) {
    std::vector<CardBlock> blocks;
    std::istringstream lines(text);
    bool apart = true;
    for (std::string line; std::getline(lines, line);) {
        if (line.empty()) {
            apart = true;
        } else if (apart) {
            blocks.push_back({line, {}});
            apart = false;
        } else if (line.rfind("- ", 0) == 0) {
            blocks.back().points.push_back(line.substr(2));
        } else {
            auto& last = blocks.back().points.empty() ? blocks.back().heading : blocks.back().points.back();
            last += " " + line.substr(line.find_first_not_of(' '));
        }
    }
    return blocks;
}

double draw_block(Canvas& canvas, CardBlock const& block, double y, double width) {
    if (block.points.empty())
        return paragraph(canvas, 0, y + 6, width, block.heading, bold(type::heading), 16);
    y = draw_heading(canvas, 0, y + 12, width, block.heading) + 4;
    for (auto const& point : block.points) {
        canvas.write({2, y + 14}, "–", plain(type::body));
        y = paragraph(canvas, 14, y + 2, width - 14, point, plain(type::body), 12) + 2;
    }
    return y;
}

} // namespace

Page instruction_card(InstructionCard const& card, Size paper, TextMeasurer const& measurer) {
    auto const blocks = blocks_of(card.text);
    Head head;
    head.title = blocks.empty() ? std::string() : blocks[0].heading;
    return on_one_page(head, worded("card"), paper, measurer, [&](Canvas& canvas, double width) {
        double y = 17;
        canvas.write({0, y}, fitted(canvas.measurer(), head.title, bold(type::title), width),
                     bold(type::title));
        canvas.line({0, y + 6}, {width, y + 6}, {.width = 1.2, .color = ink::black});
        y += 12;
        for (std::size_t i = 1; i < blocks.size(); ++i) y = draw_block(canvas, blocks[i], y, width);
        return y;
    });
}

} // namespace vowelway::chart
