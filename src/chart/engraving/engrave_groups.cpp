// SPDX-License-Identifier: MIT
// What binds several notes: beams, ties, slurs, tuplets.
#include "chart/canvas/style.hpp"
#include "chart/engraving/engrave.hpp"
#include "core/ranges.hpp"

#include <algorithm>
#include <cmath>
#include <span>

namespace vowelway::chart {
namespace {

constexpr double beam_thickness = 0.5 * space, beam_step = 0.75 * space;

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

} // namespace

void Engraver::choose_beams(std::vector<Set>& sets, Canvas& canvas) const {
    for (std::size_t i = 0; i < sets.size();) {
        auto const& beams = sets[i].event->beams;
        if (sets[i].event->rest() || beams.empty() || beams.front() != BeamPart::begin) {
            ++i;
            continue;
        }
        // The group: from here to its end, without what stands between (rests, grace notes).
        std::vector<Set*> group;
        std::size_t j = i;
        for (; j < sets.size(); ++j) {
            auto const& e = *sets[j].event;
            if (e.grace != sets[i].event->grace || e.rest() || e.beams.empty()) continue;
            group.push_back(&sets[j]);
            if (e.beams.front() == BeamPart::end) break;
        }
        ++i;
        if (group.size() < 2 || j == sets.size()) continue;

        int high = -100, low = 100, ups = 0, downs = 0;
        for (auto const* s : group) {
            high = std::max(high, s->steps.back());
            low = std::min(low, s->steps.front());
            if (s->event->stem == StemDirection::up) ++ups;
            if (s->event->stem == StemDirection::down) ++downs;
        }
        bool const grace = group.front()->event->grace;
        bool const up = ups != downs ? ups > downs : grace || 4 - low > high - 4;
        double const scale = group.front()->scale, sign = up ? -1 : 1;
        for (auto* s : group) {
            s->has_stem = true;
            s->stem.up = up;
            double const half = head_half * s->scale - 0.065 * space;
            s->stem.x = s->atom->x + (up ? half : -half);
            s->stem.from = y_of_step(up ? s->steps.front() : s->steps.back());
        }
        auto const tip = [&](Set const& s) { return y_of_step(up ? s.steps.back() : s.steps.front()); };
        double const x0 = group.front()->stem.x, x1 = std::max(x0 + 1, group.back()->stem.x);
        double const rise = std::clamp((tip(*group.back()) - tip(*group.front())) * 0.5, -space, space);
        double const slope = std::clamp(rise / (x1 - x0), -0.25, 0.25);
        std::size_t lines = 1;
        for (auto const* s : group) lines = std::max(lines, s->event->beams.size());
        double const least = (2.6 * space + static_cast<double>(lines - 1) * beam_step * 0.8) * scale;
        double base = up ? 1e9 : -1e9; // y of the outer beam at x0: as near as the shortest stem allows
        for (auto const* s : group) {
            double const here = tip(*s) + sign * least - slope * (s->stem.x - x0);
            base = up ? std::min(base, here) : std::max(base, here);
        }
        double const reach =
            y_of_step(4) - slope * (x1 - x0) / 2; // far ledger lines: to the middle of the staff
        if (!grace) base = up ? std::min(base, reach) : std::max(base, reach);
        auto const y_at = [&](double x) { return base + slope * (x - x0); };
        for (auto* s : group) s->stem.to = y_at(s->stem.x);

        auto const bar = [&](double from, double to, std::size_t level) {
            double const inward = -sign * static_cast<double>(level) * beam_step * scale,
                         thick = -sign * beam_thickness * scale;
            double const pad = 0.065 * space;
            from -= pad, to += pad;
            canvas.fill(Path()
                            .move({from, y_at(from) + inward})
                            .line({to, y_at(to) + inward})
                            .line({to, y_at(to) + inward + thick})
                            .line({from, y_at(from) + inward + thick})
                            .close(),
                        ink::black);
        };
        for (std::size_t level = 0; level < lines; ++level) {
            double start = x0;
            bool open = false;
            for (auto const* s : group) {
                if (s->event->beams.size() <= level) continue;
                switch (s->event->beams[level]) {
                case BeamPart::begin:
                    start = s->stem.x, open = true;
                    break;
                case BeamPart::through:
                    break;
                case BeamPart::end:
                    if (open) bar(start, s->stem.x, level);
                    open = false;
                    break;
                case BeamPart::forward_hook:
                    bar(s->stem.x, s->stem.x + 1.1 * space * scale, level);
                    break;
                case BeamPart::backward_hook:
                    bar(s->stem.x - 1.1 * space * scale, s->stem.x, level);
                    break;
                }
            }
        }
    }
}

void Engraver::ties(std::vector<Set> const& sets, System const& system, Canvas& canvas) {
    double const first = sets.empty() ? 0 : sets.front().atom->x - 2.6 * space;
    auto const curve = [&](Anchor const& from, double to) {
        double const up = from.stem_up ? 1 : -1; // away from the stem
        double const width = to - from.at.x;
        crescent(canvas, {from.at.x, from.at.y + up * 0.55 * space}, {to, from.at.y + up * 0.55 * space},
                 up * std::clamp(width * 0.14, 0.5 * space, 1.3 * space));
    };
    for (auto const& set : sets) {
        for (auto const& head : set.event->heads) {
            int const step = staff_step(head.written, set.atom->clef);
            double const x = set.atom->x, y = y_of_step(step);
            if (auto const open = open_ties_.find(step); head.tie_ends && open != open_ties_.end()) {
                auto from = open->second;
                if (from.at.x > x) from.at.x = std::max(0.0, first); // begun on the system before
                curve(from, x - head_half * 0.6);
                open_ties_.erase(open);
            }
            if (head.tie_begins)
                open_ties_[step] = {{x + head_half * 0.6, y}, set.has_stem ? set.stem.up : step < 4};
        }
    }
    for (auto& [step, from] : open_ties_) {
        if (from.at.x < system.width - 1) curve(from, system.width - 0.5 * space);
        from.at.x = 1e9; // goes on in the next system
    }
}

void Engraver::slurs(std::vector<Set> const& sets, System const& system, Canvas& canvas) {
    auto const top_of = [](Set const& s) {
        double y = s.steps.empty() ? 0 : y_of_step(s.steps.back()) - 0.9 * space;
        if (s.has_stem && s.stem.up) y = std::min(y, s.stem.to - 0.5 * space);
        return y;
    };
    auto const bottom_of = [](Set const& s) {
        return (s.steps.empty() ? 4 * space : y_of_step(s.steps.front())) + 0.9 * space;
    };
    auto const curve = [&](double from, double to) {
        std::vector<Set const*> under;
        for (auto const& s : sets)
            if (s.atom->x >= from - 1 && s.atom->x <= to + 1 && !s.event->rest()) under.push_back(&s);
        if (under.empty() || to - from < 1) return;
        // Below when every stem under it points up, else above: where the heads are. From a grace note:
        // below.
        bool const graced = under.front()->event->grace;
        bool const below =
            graced || ranges::all_of(under, [](Set const* s) { return s->has_stem && s->stem.up; });
        auto const edge = [&](Set const& s) { return below ? bottom_of(s) : top_of(s); };
        double const start = edge(*under.front()), end = edge(*under.back()), width = to - from;
        double height = std::min(std::clamp(width * 0.12, 0.7 * space, 2.0 * space), width * 0.5);
        for (auto const* s : under) { // as far beyond the chord as the notes within need
            double const chord = start + (end - start) * (s->atom->x - from) / width;
            height = std::max(height, 1.35 * (below ? edge(*s) - chord : chord - edge(*s)));
        }
        crescent(canvas, {from, start}, {to, end}, (below ? 1 : -1) * std::min(height, 6 * space));
    };
    for (auto const& set : sets) {
        for (int i = 0; i < set.event->slurs_end && !open_slurs_.empty(); ++i) {
            double from = open_slurs_.back().at.x;
            if (from > set.atom->x) from = sets.front().atom->x - 1.5 * space;
            curve(from, set.atom->x);
            open_slurs_.pop_back();
        }
        for (int i = 0; i < set.event->slurs_begin; ++i) open_slurs_.push_back({{set.atom->x, 0}, true});
    }
    for (auto& open : open_slurs_) {
        if (open.at.x < system.width - 1) curve(open.at.x, system.width - 0.4 * space);
        open.at.x = 1e9;
    }
}

void Engraver::tuplets(std::vector<Set> const& sets, Canvas& canvas) const {
    for (std::size_t i = 0; i < sets.size(); ++i) {
        auto const& t = sets[i].event->tuplet;
        if (!t || !t->begins) continue;
        std::size_t last = i;
        for (std::size_t j = i; j < sets.size() && sets[j].event->tuplet; ++j) {
            last = j;
            if (sets[j].event->tuplet->ends) break;
        }
        double high = -0.6 * space;
        bool beamed = true;
        for (std::size_t j = i; j <= last; ++j) {
            auto const& s = sets[j];
            if (s.event->rest() || s.event->beams.empty()) beamed = false;
            if (!s.steps.empty()) high = std::min(high, y_of_step(s.steps.back()) - 1.0 * space);
            if (s.has_stem && s.stem.up) high = std::min(high, s.stem.to - 0.4 * space);
            double const marks =
                (s.event->fermata ? 2.0 : 0) + (s.event->accent ? 1.4 : 0); // they stand nearer
            if (marks > 0) {
                double base = s.steps.empty() ? 0 : std::min(0.0, y_of_step(s.steps.back()) - 0.6 * space);
                if (s.has_stem && s.stem.up) base = std::min(base, s.stem.to);
                high = std::min(high, base - marks * space);
            }
        }
        double const from = sets[i].atom->x - head_half, to = sets[last].atom->x + head_half,
                     centre = (from + to) / 2;
        auto const style = TextStyle{.size = 1.9 * space, .color = ink::black, .bold = true, .italic = true};
        auto const number = std::to_string(t->actual);
        double const baseline = high - 0.35 * space;
        canvas.write({centre, baseline}, number, style, Align::centre);
        if (beamed) continue;
        double const room = canvas.measurer().measure(number, style).advance / 2 + 0.4 * space,
                     y = baseline - 0.6 * space;
        Pen const pen{.width = 0.13 * space, .color = ink::black};
        if (centre - room > from)
            canvas.stroke(Path().move({from, y + 0.7 * space}).line({from, y}).line({centre - room, y}), pen);
        if (centre + room < to)
            canvas.stroke(Path().move({centre + room, y}).line({to, y}).line({to, y + 0.7 * space}), pen);
    }
}

} // namespace vowelway::chart
