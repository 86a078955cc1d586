// SPDX-License-Identifier: MIT
#include "chart/engraving/curves.hpp"

#include "chart/canvas/style.hpp"
#include "core/ranges.hpp"

#include <algorithm>

namespace vowelway::chart {
namespace {

constexpr double goes_on = 1e9; // x of what began on a system before

/// A crescent from one point to another that rises by `height` (negative: up the page).
void crescent(Canvas& canvas, Point from, Point to, double height) {
    double const third = (to.x - from.x) * 0.28, body = 0.26 * space * (height < 0 ? -1 : 1);
    canvas.fill(
        Path()
            .move(from)
            .curve({from.x + third, from.y + height + body / 2}, {to.x - third, to.y + height + body / 2}, to)
            .curve({to.x - third, to.y + height - body / 2}, {from.x + third, from.y + height - body / 2},
                   from)
            .close(),
        ink::black);
}

double over(SetEvent const& s) {
    double y = s.steps.empty() ? 0 : y_of_step(s.steps.back()) - 0.9 * space;
    if (s.has_stem && s.stem.up) y = std::min(y, s.stem.to - 0.5 * space);
    return y;
}

double under(SetEvent const& s) {
    return (s.steps.empty() ? 4 * space : y_of_step(s.steps.front())) + 0.9 * space;
}

/// Below when every stem under it points up, else above: where the heads are. From a grace note: below.
void slur(std::vector<SetEvent> const& sets, double from, double to, Canvas& canvas) {
    std::vector<SetEvent const*> within;
    for (auto const& s : sets)
        if (s.atom->x >= from - 1 && s.atom->x <= to + 1 && !s.event->rest()) within.push_back(&s);
    if (within.empty() || to - from < 1) return;
    bool const graced = within.front()->event->grace;
    bool const below =
        graced || ranges::all_of(within, [](SetEvent const* s) { return s->has_stem && s->stem.up; });
    auto const edge = [&](SetEvent const& s) { return below ? under(s) : over(s); };
    double const start = edge(*within.front()), end = edge(*within.back()), width = to - from;
    double height = std::min(std::clamp(width * 0.12, 0.7 * space, 2.0 * space), width * 0.5);
    for (auto const* s : within) { // as far beyond the chord as the notes within need
        double const chord = start + (end - start) * (s->atom->x - from) / width;
        height = std::max(height, 1.35 * (below ? edge(*s) - chord : chord - edge(*s)));
    }
    crescent(canvas, {from, start}, {to, end}, (below ? 1 : -1) * std::min(height, 6 * space));
}

} // namespace

void OpenTies::curve(Begun const& from, double to, Canvas& canvas) {
    double const up = from.stem_up ? 1 : -1; // away from the stem
    double const width = to - from.at.x;
    crescent(canvas, {from.at.x, from.at.y + up * 0.55 * space}, {to, from.at.y + up * 0.55 * space},
             up * std::clamp(width * 0.14, 0.5 * space, 1.3 * space));
}

void OpenTies::draw(std::vector<SetEvent> const& sets, System const& system, Canvas& canvas) {
    double const first = sets.empty() ? 0 : sets.front().atom->x - 2.6 * space;
    for (auto const& set : sets) {
        for (auto const& head : set.event->heads) {
            int const step = staff_step(head.written, set.atom->clef);
            double const x = set.atom->x, y = y_of_step(step);
            if (auto const open = begun_.find(step); head.tie_ends && open != begun_.end()) {
                auto from = open->second;
                if (from.at.x > x) from.at.x = std::max(0.0, first);
                curve(from, x - head_half * 0.6, canvas);
                begun_.erase(open);
            }
            if (head.tie_begins)
                begun_[step] = {{x + head_half * 0.6, y}, set.has_stem ? set.stem.up : step < middle_step};
        }
    }
    for (auto& [step, from] : begun_) {
        if (from.at.x < system.width - 1) curve(from, system.width - 0.5 * space, canvas);
        from.at.x = goes_on;
    }
}

void OpenSlurs::draw(std::vector<SetEvent> const& sets, System const& system, Canvas& canvas) {
    for (auto const& set : sets) {
        for (int i = 0; i < set.event->slurs_end && !begun_.empty(); ++i) {
            double from = begun_.back();
            if (from > set.atom->x) from = sets.front().atom->x - 1.5 * space;
            slur(sets, from, set.atom->x, canvas);
            begun_.pop_back();
        }
        for (int i = 0; i < set.event->slurs_begin; ++i) begun_.push_back(set.atom->x);
    }
    for (auto& from : begun_) {
        if (from < system.width - 1) slur(sets, from, system.width - 0.4 * space, canvas);
        from = goes_on;
    }
}

} // namespace vowelway::chart
