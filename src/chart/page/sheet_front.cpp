// SPDX-License-Identifier: MIT
#include "chart/page/sheet_front.hpp"

#include "chart/page/lane_legend.hpp"
#include "chart/page/watch.hpp"

#include <algorithm>

namespace vowelway::chart {
namespace {

constexpr double front_gap = 16, below_part = 6;
constexpr double least_beside = 430; ///< of a page that has the ranges beside the notes to watch

struct FrontMaker {
    plan::Plan const& plan;
    plan::Pencil const& pencil;
    Head const& title;
    double width;
    TextMeasurer const& measurer;
    bool numbers;

    Heading of_title() const {
        Heading front{Drawing(measurer)};
        front.height = draw_title(front.drawing, title, width);
        return front;
    }

    Heading of_all() const {
        auto front = of_title();
        if (width >= least_beside) return beside(std::move(front));
        front.height = draw_watch(front.drawing, plan, pencil, front.height, width, numbers) + below_part;
        add_rest(front);
        return front;
    }

    Heading of_watch() const {
        auto front = of_title();
        front.height = draw_watch(front.drawing, plan, pencil, front.height, width, numbers) + below_part;
        return front;
    }

    Heading of_rest() const {
        Heading rest{Drawing(measurer)};
        add_rest(rest);
        return rest;
    }

  private:
    void add_rest(Heading& heading) const {
        heading.height = draw_ranges(heading.drawing, plan, 0, heading.height, width, 2) + below_part;
        heading.height = draw_lane_legend(heading.drawing, {&plan, 1}, heading.height, width) + below_part;
    }

    /// The legend goes below a short list where many vowels leave a hole there.
    Heading beside(Heading front) const {
        double const right = std::min(158.0, width * 0.31), left = width - right - front_gap;
        double const listed =
            draw_watch(front.drawing, plan, pencil, front.height, left, numbers) + below_part;
        double const ranges = draw_ranges(front.drawing, plan, left + front_gap, front.height, right, 1);
        Drawing legend(measurer);
        double const tall = draw_lane_legend(legend, {&plan, 1}, 0, left);
        if (listed + tall <= ranges + below_part) {
            legend.replay(front.drawing, {0, listed});
            front.height = ranges + 2 * below_part;
            return front;
        }
        front.height =
            draw_lane_legend(front.drawing, {&plan, 1}, std::max(listed, ranges + below_part), width) +
            below_part;
        return front;
    }
};

} // namespace

std::vector<Heading> headings_of(plan::Plan const& plan, plan::Pencil const& pencil, Head const& title,
                                 Size area, double first_block, TextMeasurer const& measurer, bool numbers) {
    FrontMaker const make{plan, pencil, title, area.width, measurer, numbers};
    std::vector<Heading> headings;
    headings.push_back(make.of_all());
    double const all = headings.front().height;
    if (all + first_block <= area.height) return headings;
    auto watch = make.of_watch();
    if (all <= area.height && watch.height + first_block > area.height) return headings;
    headings.clear();
    headings.push_back(std::move(watch));
    headings.push_back(make.of_rest());
    return headings;
}

} // namespace vowelway::chart
