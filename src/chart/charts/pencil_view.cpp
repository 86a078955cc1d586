// SPDX-License-Identifier: MIT
// The pencil view: the vocal line with its words, at a size for the music stand, and over it only what a
// teacher would pencil. It is laid out on a smaller page and drawn larger. Passes: measure the bars -> assign
// them to systems -> draw each -> assign them to pages, as evenly as may be -> place and draw.
#include "chart/canvas/style.hpp"
#include "chart/charts/charts.hpp"
#include "chart/engraving/engrave.hpp"
#include "chart/page/over_staff.hpp"
#include "chart/page/pencil_marks.hpp"
#include "chart/page/soundings.hpp"
#include "chart/page/title.hpp"
#include "chart/page/words_under.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway::chart {
namespace {

constexpr double between_systems = 16, most_between = 64; // vertical room between systems
constexpr double most_larger = 1.5, step = 0.06;          // than on the other sheets

/// A page of the other sheets that is narrower than this holds so little that nothing is drawn larger.
double least_larger(Size paper) { return std::clamp(paper.width / 480, 1.0, 1.2); }

/// A window of a screen, with no page to fill.
bool endless(Size paper) { return paper.height > 8 * paper.width; }

struct Line {
    Drawing drawing;
    double top = 0, bottom = 0; ///< of its ink; the staff's top line is at 0
    std::vector<Sounding> soundings = {};
    double height() const { return bottom - top; }
};

std::vector<Line> lines_of(plan::Plan const& plan, plan::Pencil const& pencil, double width,
                           TextMeasurer const& measurer) {
    auto const staff = staff_to_draw(plan.passage);
    Engraver engraver(staff);
    WordsUnder words(Under::words);
    std::vector<Line> lines;
    for (auto const& system : assign_systems(measure_bars(plan, staff, measurer, Under::words), width)) {
        Line line{Drawing(measurer)};
        engraver.draw(system, line.drawing);
        draw_pencil_marks(system, pencil, line.drawing);
        draw_over_staff(system, staff, {}, line.drawing);
        words.draw(system, line.drawing);
        line.bottom = line.drawing.bottom(-1e6, 1e6, 4 * space) + 3;
        line.top = line.drawing.top(-1e6, 1e6, 0);
        line.soundings = soundings_of(system);
        lines.push_back(std::move(line));
    }
    return lines;
}

/// The first line of each page, when a page holds `height`, the first one less by `front`.
std::vector<std::size_t> breaks_of(std::vector<Line> const& lines, double front, double height) {
    std::vector<std::size_t> first{0};
    double used = front;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        double const need = lines[i].height() + between_systems;
        if (i > first.back() && used + need > height + between_systems / 2) {
            first.push_back(i);
            used = 0;
        }
        used += need;
    }
    return first;
}

/// As few pages as may be, and none much fuller than another.
std::vector<std::size_t> even_breaks(std::vector<Line> const& lines, double front, double height) {
    auto const least = breaks_of(lines, front, height).size();
    double low = height / 3, high = height;
    for (int round = 0; round < 24; ++round) {
        double const middle = (low + high) / 2;
        (breaks_of(lines, front, middle).size() > least ? low : high) = middle;
    }
    return breaks_of(lines, front, high);
}

/// Draws lines down from `y`, what room is left put between them.
void place(std::vector<Line> const& lines, std::size_t from, std::size_t to, double y, Page& page) {
    double const bottom = endless(page.size) ? y : page.size.height - margin_bottom;
    double used = 0;
    for (std::size_t i = from; i < to; ++i) used += lines[i].height() + between_systems;
    double const gaps = std::max<double>(1, static_cast<double>(to - from));
    double const gap =
        between_systems + std::clamp((bottom - y - used) / gaps, 0.0, most_between - between_systems);
    for (std::size_t i = from; i < to; ++i) {
        y += gap / 2;
        lines[i].drawing.replay(page.drawing, {margin_side, y - lines[i].top});
        for (auto const& one : lines[i].soundings)
            page.notes.push_back(
                {one.note, {margin_side + one.from, y, one.to - one.from, lines[i].height()}, one.begins});
        y += lines[i].height() + gap / 2;
    }
}

/// The view at one size: what stands on the front, the lines, and where the pages break.
struct View {
    double larger = 1;
    Size small; ///< the page before it is drawn larger
    Drawing front;
    double front_height = 0;
    std::vector<Line> lines;
    std::vector<std::size_t> first; ///< line of each page

    double bottom() const { return small.height - margin_bottom; }
};

View view_at(double larger, plan::Plan const& plan, plan::Pencil const& pencil, Head const& head, Size paper,
             TextMeasurer const& measurer) {
    Size const small{paper.width / larger, paper.height / larger};
    double const width = small.width - 2 * margin_side;
    View view{larger, small, Drawing(measurer), 0, lines_of(plan, pencil, width, measurer), {}};
    view.front_height =
        draw_pencil_legend(view.front, pencil, draw_title(view.front, head, width) - 4, width);
    view.first = even_breaks(view.lines, view.front_height, view.bottom() - margin_top);
    return view;
}

/// As large as may be without a page more.
View view_of(plan::Plan const& plan, plan::Pencil const& pencil, Head const& head, Size paper,
             TextMeasurer const& measurer) {
    auto view = view_at(least_larger(paper), plan, pencil, head, paper, measurer);
    for (double larger = view.larger + step; !endless(paper) && larger <= most_larger; larger += step) {
        auto next = view_at(larger, plan, pencil, head, paper, measurer);
        if (next.first.size() > view.first.size()) break;
        view = std::move(next);
    }
    return view;
}

Page larger(Page const& small, double scale, Size paper, TextMeasurer const& measurer) {
    Page page{paper, Drawing(measurer), small.notes};
    small.drawing.replay(page.drawing, {}, scale);
    for (auto& [note, box, begins] : page.notes)
        box = {box.left * scale, box.top * scale, box.width * scale, box.height * scale};
    return page;
}

} // namespace

std::vector<Page> pencil_view(plan::Plan const& plan, Size paper, TextMeasurer const& measurer) {
    auto const pencil = plan::pencil_of(plan);
    auto const head = head_of(plan, plan::summary_of(plan, pencil));
    auto const view = view_of(plan, pencil, head, paper, measurer);
    auto const count = view.first.size();
    std::vector<Page> pages;
    for (std::size_t p = 0; p < count; ++p) {
        Page small{view.small, Drawing(measurer)};
        draw_margins(small.drawing, head, reworded(to_string(Kind::pencil)), view.small, p + 1, count);
        if (p == 0) view.front.replay(small.drawing, {margin_side, margin_top});
        auto const end = p + 1 < count ? view.first[p + 1] : view.lines.size();
        place(view.lines, view.first[p], end, margin_top + (p == 0 ? view.front_height : 0), small);
        pages.push_back(larger(small, view.larger, paper, measurer));
    }
    return pages;
}

} // namespace vowelway::chart
