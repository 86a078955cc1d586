// SPDX-License-Identifier: MIT
#include "chart/engraving/tuplets.hpp"

#include "chart/canvas/style.hpp"

#include <algorithm>
#include <span>
#include <string>

namespace vowelway::chart {
namespace {

/// The tuplet that begins with an event, to its end or as far as tuplets go.
std::span<SetEvent const> tuplet_from(std::vector<SetEvent> const& sets, std::size_t first) {
    std::size_t last = first;
    for (std::size_t j = first; j < sets.size() && sets[j].event->tuplet; ++j) {
        last = j;
        if (sets[j].event->tuplet->ends) break;
    }
    return std::span(sets).subspan(first, last - first + 1);
}

/// The highest ink of a note that the number must clear: head, stem, and the marks that stand nearer.
double top_of(SetEvent const& s) {
    double high = -0.6 * space;
    if (!s.steps.empty()) high = std::min(high, y_of_step(s.steps.back()) - 1.0 * space);
    if (s.has_stem && s.stem.up) high = std::min(high, s.stem.to - 0.4 * space);
    double const marks = (s.event->fermata ? 2.0 : 0) + (s.event->accent ? 1.4 : 0);
    if (marks > 0) {
        double base = s.steps.empty() ? 0 : std::min(0.0, y_of_step(s.steps.back()) - 0.6 * space);
        if (s.has_stem && s.stem.up) base = std::min(base, s.stem.to);
        high = std::min(high, base - marks * space);
    }
    return high;
}

/// Two hooks that leave `room` to each side of the centre.
void bracket(Canvas& canvas, double from, double to, double y, double room) {
    double const centre = (from + to) / 2;
    Pen const pen{.width = 0.13 * space, .color = ink::black};
    if (centre - room > from)
        canvas.stroke(Path().move({from, y + 0.7 * space}).line({from, y}).line({centre - room, y}), pen);
    if (centre + room < to)
        canvas.stroke(Path().move({centre + room, y}).line({to, y}).line({to, y + 0.7 * space}), pen);
}

void draw_tuplet(std::span<SetEvent const> notes, Canvas& canvas) {
    double high = -0.6 * space;
    bool beamed = true;
    for (auto const& s : notes) {
        if (s.event->rest() || s.event->beams.empty()) beamed = false;
        high = std::min(high, top_of(s));
    }
    double const from = notes.front().atom->x - head_half, to = notes.back().atom->x + head_half;
    auto const style = TextStyle{.size = 1.9 * space, .color = ink::black, .bold = true, .italic = true};
    auto const number = std::to_string(notes.front().event->tuplet->actual);
    double const baseline = high - 0.35 * space;
    canvas.write({(from + to) / 2, baseline}, number, style, Align::centre);
    if (beamed) return;
    double const room = canvas.measurer().measure(number, style).advance / 2 + 0.4 * space;
    bracket(canvas, from, to, baseline - 0.6 * space, room);
}

} // namespace

void draw_tuplets(std::vector<SetEvent> const& sets, Canvas& canvas) {
    for (std::size_t i = 0; i < sets.size(); ++i) {
        auto const& t = sets[i].event->tuplet;
        if (t && t->begins) draw_tuplet(tuplet_from(sets, i), canvas);
    }
}

} // namespace vowelway::chart
