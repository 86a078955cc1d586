// SPDX-License-Identifier: MIT
// Two singers, one song. The passes are those of the passage sheet, each block with a lane and its advice for
// either singer.
#include "chart/charts/charts.hpp"
#include "chart/charts/plans_compared/differences.hpp"
#include "chart/page/lane_legend.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/system_block.hpp"
#include "chart/page/title.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <array>
#include <map>

namespace vowelway::chart {
namespace {

constexpr std::string_view sentence_of_comparison = to_word(
    "One song, two voices: each lane has one singer's resonances (bands) under the same harmonics (lines), "
    "and what that singer does. Frames mark "
    "where the two plans differ, dashed where this is uncertain.");
constexpr double between_plans = 14, least_shared_lane = 58, most_shared_lane = 92;
constexpr double name_height = 12; ///< of the singer's name over each lane

struct Pair {
    std::array<Block, 2> of;
    double height(double lane) const {
        double sum = of[0].lane - of[0].top;
        for (auto const& b : of) sum += name_height + lane + b.lower_height;
        return sum;
    }
};

/// The notes that part, next to each other in one frame when it is drawn alike.
void frames(Canvas& canvas, plan::PlansCompared const& c, Block const& block, double left, double top,
            double bottom) {
    struct Run {
        double from = 0, to = 0;
        bool sure = false;
    };
    std::vector<Run> runs;
    for (auto const& s : block.soundings) {
        auto const at = ranges::find(c.notes, s.note, &plan::ComparedNote::note);
        if (at == c.notes.end() || at->parting == plan::Parting::none) continue;
        bool const sure = at->certainty >= plan::sure_parting;
        if (!runs.empty() && runs.back().sure == sure && s.from - runs.back().to < 1.5)
            runs.back().to = s.to;
        else
            runs.push_back({s.from, s.to, sure});
    }
    for (auto const& run : runs) {
        Box const box{left + run.from, top, run.to - run.from, bottom - top};
        canvas.stroke(Path().rectangle(box),
                      {.width = run.sure ? 1.3 : 0.8,
                       .color = ink::black,
                       .dashes = run.sure ? std::vector<double>{} : std::vector<double>{3, 2}});
    }
}

void draw(Canvas& canvas, plan::PlansCompared const& c, Pair const& pair, LaneScale const& scale, Point at) {
    auto const& upper = pair.of[0];
    double y = at.y - upper.top;
    upper.upper.replay(canvas, {at.x, y});
    y += upper.lane;
    for (std::size_t s = 0; s < 2; ++s) {
        auto const& block = pair.of[s];
        canvas.write({at.x, y + name_height - 4},
                     fitted(canvas.measurer(), c.plans[s].singer.name, bold(type::small), block.width),
                     bold(type::small));
        y += name_height;
        Drawing middle(canvas.measurer());
        draw_lane(middle, c.plans[s], block.soundings, scale, block.width);
        middle.replay(canvas, {at.x, y});
        frames(canvas, c, block, at.x, y - 1, y + scale.height + rail_height + 1);
        block.lower.replay(canvas, {at.x, y + scale.height});
        y += scale.height + block.lower_height;
    }
}

LaneScale common_scale(plan::PlansCompared const& c, double height) {
    auto scale = lane_scale(c.plans[0], height);
    auto const other = lane_scale(c.plans[1], height);
    scale.low_hz = std::min(scale.low_hz, other.low_hz);
    scale.high_hz = std::max(scale.high_hz, other.high_hz);
    return scale;
}

Head title_of(plan::PlansCompared const& c) {
    auto const& [a, b] = c.plans;
    auto head = head_of(a, reworded(sentence_of_comparison));
    head.who = worded("{0}  and  {1}", a.singer.name, b.singer.name);
    head.how = a.technique;
    bool const average = a.singer.average || b.singer.average;
    head.source = average ? std::string(reworded(average_voice_notice)) : std::string{};
    head.average = average;
    return head;
}

} // namespace

std::vector<Page> plans_compared(plan::PlansCompared const& c, Size paper, TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side, staff_width = width - gutter_left - gutter_right;
    auto const& song = c.plans[0];
    auto const staff = staff_to_draw(song.passage);
    auto systems = assign_systems(measure_bars(song, staff, measurer), staff_width);
    for (auto& system : systems)
        for (auto& atom : system.atoms) atom.underlay.heard.clear(); // of one singer only
    auto const numbers = differences_to_list(c);

    BlockMaker first(c.plans[0], staff, numbers, measurer), second(c.plans[1], staff, numbers, measurer);
    std::vector<Pair> pairs;
    for (auto const& system : systems) pairs.push_back({{first.make(system), second.make(system)}});

    Drawing front(measurer);
    auto const head = title_of(c);
    double used = draw_title(front, head, width);
    used = draw_differences(front, c, numbers, used, width);
    used = draw_shares(front, c, used, width);
    used = draw_lane_legend(front, c.plans, used, width) + 8;

    // Assign: pairs to pages. Place: what is left over makes the lanes taller.
    double const page_height = paper.height - margin_top - margin_bottom;
    std::vector<std::vector<std::size_t>> sheets{{}};
    double filled = used;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        double const height = pairs[i].height(least_shared_lane) + between_plans;
        if (filled + height > page_height + between_plans && (!sheets.back().empty() || sheets.size() == 1))
            sheets.emplace_back(), filled = 0;
        sheets.back().push_back(i);
        filled += height;
    }
    std::vector<Page> pages;
    for (std::size_t s = 0; s < sheets.size(); ++s) {
        Page page{paper, Drawing(measurer)};
        draw_margins(page.drawing, head, worded("two plans"), paper, s + 1, sheets.size());
        double y = margin_top + (s == 0 ? used : 0), need = 0;
        if (s == 0) front.replay(page.drawing, {margin_side, margin_top});
        for (auto const i : sheets[s]) need += pairs[i].height(least_shared_lane) + between_plans;
        double const spare = std::max(0.0, margin_top + page_height - y - need),
                     lanes = 2 * std::max<double>(1, static_cast<double>(sheets[s].size()));
        auto const scale = common_scale(c, std::min(most_shared_lane, least_shared_lane + spare / lanes));
        for (auto const i : sheets[s]) {
            draw(page.drawing, c, pairs[i], scale, {margin_side + gutter_left, y});
            y += pairs[i].height(scale.height) + between_plans;
        }
        pages.push_back(std::move(page));
    }
    return pages;
}

} // namespace vowelway::chart
