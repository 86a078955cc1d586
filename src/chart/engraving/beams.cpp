// SPDX-License-Identifier: MIT
#include "chart/engraving/beams.hpp"

#include "chart/canvas/style.hpp"

#include <algorithm>
#include <optional>

namespace vowelway::chart {
namespace {

constexpr double beam_thickness = 0.5 * space, beam_step = 0.75 * space;

using Group = std::vector<SetEvent*>; // the notes under one beam

/// The group that begins with an event, without what stands between (rests, grace notes); empty where it does
/// not end or is a note alone.
Group group_from(std::vector<SetEvent>& sets, std::size_t first) {
    auto const& beams = sets[first].event->beams;
    if (sets[first].event->rest() || beams.empty() || beams.front() != BeamPart::begin) return {};
    Group group;
    for (std::size_t j = first; j < sets.size(); ++j) {
        auto const& e = *sets[j].event;
        if (e.grace != sets[first].event->grace || e.rest() || e.beams.empty()) continue;
        group.push_back(&sets[j]);
        if (e.beams.front() == BeamPart::end) return group.size() < 2 ? Group{} : group;
    }
    return {};
}

/// As the most stems are written, else away from the note that lies farthest from the middle line.
bool stems_up(Group const& group) {
    int high = -100, low = 100, ups = 0, downs = 0;
    for (auto const* s : group) {
        high = std::max(high, s->steps.back());
        low = std::min(low, s->steps.front());
        if (s->event->stem == StemDirection::up) ++ups;
        if (s->event->stem == StemDirection::down) ++downs;
    }
    bool const grace = group.front()->event->grace;
    return ups != downs ? ups > downs : grace || middle_step - low > high - middle_step;
}

/// Stems at their side of the heads; how long they are the beam decides.
void begin_stems(Group const& group, bool up) {
    for (auto* s : group) {
        s->has_stem = true;
        s->stem.up = up;
        double const half = head_half * s->scale - 0.065 * space;
        s->stem.x = s->atom->x + (up ? half : -half);
        s->stem.from = y_of_step(up ? s->steps.front() : s->steps.back());
    }
}

std::size_t lines_of(Group const& group) {
    std::size_t lines = 1;
    for (auto const* s : group) lines = std::max(lines, s->event->beams.size());
    return lines;
}

/// The outer line of a beam.
struct Beam {
    double x0 = 0, base = 0, slope = 0; ///< `base`: y at x0
    double sign = 1, scale = 1;         ///< sign -1: over the notes
    double y_at(double x) const { return base + slope * (x - x0); }
};

/// As near to the notes as the shortest stem allows.
Beam beam_of(Group const& group, bool up) {
    auto const tip = [&](SetEvent const& s) { return y_of_step(up ? s.steps.back() : s.steps.front()); };
    Beam beam{.x0 = group.front()->stem.x, .sign = up ? -1.0 : 1.0, .scale = group.front()->scale};
    double const x0 = beam.x0, x1 = std::max(x0 + 1, group.back()->stem.x);
    double const rise = std::clamp((tip(*group.back()) - tip(*group.front())) * 0.5, -space, space);
    beam.slope = std::clamp(rise / (x1 - x0), -0.25, 0.25);
    double const least =
        (2.6 * space + static_cast<double>(lines_of(group) - 1) * beam_step * 0.8) * beam.scale;
    beam.base = up ? 1e9 : -1e9;
    for (auto const* s : group) {
        double const here = tip(*s) + beam.sign * least - beam.slope * (s->stem.x - x0);
        beam.base = up ? std::min(beam.base, here) : std::max(beam.base, here);
    }
    // far ledger lines: to the middle of the staff
    double const reach = y_of_step(middle_step) - beam.slope * (x1 - x0) / 2;
    if (!group.front()->event->grace)
        beam.base = up ? std::min(beam.base, reach) : std::max(beam.base, reach);
    return beam;
}

void draw_stretch(Canvas& canvas, Beam const& beam, double from, double to, std::size_t level) {
    double const inward = -beam.sign * static_cast<double>(level) * beam_step * beam.scale,
                 thick = -beam.sign * beam_thickness * beam.scale;
    double const pad = 0.065 * space;
    from -= pad, to += pad;
    canvas.fill(Path()
                    .move({from, beam.y_at(from) + inward})
                    .line({to, beam.y_at(to) + inward})
                    .line({to, beam.y_at(to) + inward + thick})
                    .line({from, beam.y_at(from) + inward + thick})
                    .close(),
                ink::black);
}

/// One line of a beam: level 0 is the outer one.
void draw_level(Canvas& canvas, Beam const& beam, Group const& group, std::size_t level) {
    double const hook = 1.1 * space * beam.scale;
    std::optional<double> start;
    for (auto const* s : group) {
        if (s->event->beams.size() <= level) continue;
        switch (s->event->beams[level]) {
        case BeamPart::begin:
            start = s->stem.x;
            break;
        case BeamPart::through:
            break;
        case BeamPart::end:
            if (start) draw_stretch(canvas, beam, *start, s->stem.x, level);
            start.reset();
            break;
        case BeamPart::forward_hook:
            draw_stretch(canvas, beam, s->stem.x, s->stem.x + hook, level);
            break;
        case BeamPart::backward_hook:
            draw_stretch(canvas, beam, s->stem.x - hook, s->stem.x, level);
            break;
        }
    }
}

} // namespace

void draw_beams(std::vector<SetEvent>& sets, Canvas& canvas) {
    for (std::size_t i = 0; i < sets.size(); ++i) {
        auto const group = group_from(sets, i);
        if (group.empty()) continue;
        bool const up = stems_up(group);
        begin_stems(group, up);
        auto const beam = beam_of(group, up);
        for (auto* s : group) s->stem.to = beam.y_at(s->stem.x);
        for (std::size_t level = 0; level < lines_of(group); ++level) draw_level(canvas, beam, group, level);
    }
}

} // namespace vowelway::chart
