// SPDX-License-Identifier: MIT
#include "chart/page/advice_rows.hpp"

#include "chart/page/marks.hpp"
#include "core/ranges.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <utility>

namespace vowelway::chart {
namespace {

constexpr double advice_sign_size = 6.5, advice_line = 10.5;
constexpr double clear_of_rows = 2.5; // half of what is between two words

std::string shade_of(plan::Decision const& d) {
    return d.advice == plan::Advice::modify ? d.target.shade.quality().ipa() : std::string{};
}

bool same_advice(plan::Decision const& a, plan::Decision const& b) {
    if (a.advice == plan::Advice::hold && b.advice == plan::Advice::hold)
        return true; // its sign stands alone
    return a.advice == b.advice && brief_of(a) == brief_of(b) && shade_of(a) == shade_of(b);
}

/// Notes next to each other with one advice.
struct Run {
    double from = 0, to = 0;
    plan::Decision const* decision = nullptr;
};

std::vector<Run> runs_of(plan::Plan const& plan, std::vector<Sounding> const& soundings) {
    std::vector<Run> runs;
    for (auto const& s : soundings) {
        auto const& d = plan.notes[s.note].decision;
        if (!d) continue;
        if (!runs.empty() && same_advice(*runs.back().decision, *d))
            runs.back().to = s.to;
        else
            runs.push_back({s.from, s.to, &*d});
    }
    return runs;
}

/// The sign of a run, and a line as long as its advice goes on. Returns where it ends.
double draw_sign(Run const& run, double next, double y, Drawing& drawing) {
    auto const advice = run.decision->advice;
    advice_sign(drawing, {run.from + advice_sign_size / 2, y + 5}, advice_sign_size, advice);
    double const end = run.from + advice_sign_size + 1.5, to = std::min(run.to, next - 3);
    if (advice == plan::Advice::hold || to - end <= 4) return end;
    drawing.line(
        {end + 1, y + 5}, {to, y + 5},
        {.width = 0.7,
         .color = color_of(advice),
         .dashes = advice == plan::Advice::modify ? std::vector<double>{} : std::vector<double>{1.6, 1.6}});
    return to;
}

/// Draws the rail of the signs; returns the runs that have something to say, the weightier first.
std::vector<Run const*> draw_rail_of_signs(std::vector<Run> const& runs, double width, double y,
                                           Drawing& drawing) {
    double end = -1e9;
    std::vector<Run const*> speaking;
    for (std::size_t i = 0; i < runs.size(); ++i) {
        auto const& run = runs[i];
        if (end > run.from + 3) continue;
        end = draw_sign(run, i + 1 < runs.size() ? runs[i + 1].from : width, y, drawing);
        auto const advice = run.decision->advice;
        if (advice == plan::Advice::modify || (advice == plan::Advice::migrate && is_sure(*run.decision)))
            speaking.push_back(&run);
    }
    ranges::stable_partition(speaking,
                             [](Run const* run) { return run->decision->advice == plan::Advice::modify; });
    return speaking;
}

/// Two lines of words, filled as room is asked for.
class WordRows {
  public:
    WordRows(double top, double limit, double lowest) : top_(top), limit_(limit), lowest_(lowest) {}

    /// Where words of this width may begin: at `wish` or, near the end, before it; in the first line that has
    /// room.
    std::optional<Point> take(double wish, double width) {
        if (width <= 0) return std::nullopt;
        double const from = std::min(wish, limit_ - width), to = from + width + 2 * clear_of_rows;
        for (std::size_t row = 0; row < taken_.size(); ++row) {
            if (ranges::any_of(taken_[row], [&](auto const& t) { return from < t.second && t.first < to; }))
                continue;
            taken_[row].emplace_back(from, to);
            double const baseline = top_ + static_cast<double>(row + 1) * advice_line - 2.5;
            lowest_ = std::max(lowest_, baseline + 2.5);
            return Point{from, baseline};
        }
        return std::nullopt;
    }
    double lowest() const { return lowest_; }

  private:
    double top_, limit_, lowest_;
    std::array<std::vector<std::pair<double, double>>, 2> taken_;
};

/// The shade and how to reach it, else the shade alone.
void say(Run const& run, WordRows& rows, Drawing& drawing) {
    auto const& d = *run.decision;
    auto const shade = shade_of(d), brief = brief_of(d);
    auto const words_style = plain(type::label, color_of(d.advice));
    auto const shade_style = bold(type::body, color_of(d.advice));
    auto const& m = drawing.measurer();
    double const shade_width = shade.empty() ? 0 : m.measure(shade, shade_style).advance + 3;
    double const words_width = brief.empty() ? 0 : m.measure(brief, words_style).advance;
    if (auto const at = rows.take(run.from, shade_width + words_width)) {
        drawing.text(*at, shade, shade_style);
        drawing.text({at->x + shade_width, at->y}, brief, words_style);
    } else if (auto const alone = rows.take(run.from, shade_width)) {
        drawing.text(*alone, shade, shade_style);
    }
}

} // namespace

double draw_advice(plan::Plan const& plan, std::vector<Sounding> const& soundings, double width, double y,
                   Drawing& drawing) {
    auto const runs = runs_of(plan, soundings);
    WordRows rows(y + 10, width + gutter_right, runs.empty() ? y : y + 10);
    for (auto const* run : draw_rail_of_signs(runs, width, y, drawing)) say(*run, rows, drawing);
    return rows.lowest() + 1;
}

} // namespace vowelway::chart
