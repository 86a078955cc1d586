// SPDX-License-Identifier: MIT
#include "chart/page/marks.hpp"

#include "core/utf8.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::chart {
namespace {

/// Dots on a lattice fixed to the page, so that neighbouring boxes join without a seam.
void stipple(Canvas& canvas, Box const& box, double pitch, double diameter, Ink color) {
    Path dots;
    auto const first = [&](double from) { return static_cast<long>(std::ceil(from / pitch)); };
    double const inset = diameter / 2;
    for (long row = first(box.top + inset); static_cast<double>(row) * pitch <= box.bottom() - inset; ++row) {
        double const shift = row % 2 != 0 ? pitch / 2 : 0;
        for (long column = first(box.left + inset - shift);
             static_cast<double>(column) * pitch + shift <= box.right() - inset; ++column) {
            Point const at{static_cast<double>(column) * pitch + shift, static_cast<double>(row) * pitch};
            dots.move(at).line(at);
        }
    }
    canvas.stroke(dots, {.width = diameter, .color = color, .round = true});
}

} // namespace

void hatch(Canvas& canvas, Box const& box, double gap, Pen const& pen) {
    // Lines x + y = c, clipped to the box.
    Path lines;
    double const step = gap * std::sqrt(2.0);
    for (long i = static_cast<long>(std::ceil((box.left + box.top) / step));; ++i) {
        double const c = static_cast<double>(i) * step;
        if (c >= box.right() + box.bottom()) break;
        double const from = std::max(box.left, c - box.bottom()), to = std::min(box.right(), c - box.top);
        if (to > from) lines.move({from, c - from}).line({to, c - to});
    }
    canvas.stroke(lines, pen);
}

void fill_zone(Canvas& canvas, Box const& box, plan::ZoneReading const& reading) {
    switch (reading.zone) {
    case plan::Zone::open:
        break;
    case plan::Zone::turning:
        stipple(canvas, box, 3.0, 0.55 + 1.15 * std::clamp(reading.p_turned, 0.0, 1.0), ink::first);
        break;
    case plan::Zone::close:
        hatch(canvas, box, 3.4, {.width = 0.35, .color = ink::first});
        break;
    case plan::Zone::meeting:
        hatch(canvas, box, 1.7, {.width = 0.75, .color = ink::first});
        break;
    case plan::Zone::above:
        canvas.fill(box, ink::first_fill);
        break;
    }
}

void advice_sign(Canvas& canvas, Point c, double size, plan::Advice advice) {
    double const r = size / 2;
    switch (advice) {
    case plan::Advice::hold:
        canvas.line({c.x - r, c.y}, {c.x + r, c.y}, {.width = size * 0.2, .color = color_of(advice)});
        break;
    case plan::Advice::migrate:
        canvas.stroke(Path()
                          .move({c.x - r, c.y + 0.1 * size})
                          .curve({c.x - 0.5 * r, c.y - 0.75 * r}, {c.x - 0.2 * r, c.y - 0.6 * r}, {c.x, c.y})
                          .curve({c.x + 0.2 * r, c.y + 0.6 * r}, {c.x + 0.5 * r, c.y + 0.75 * r},
                                 {c.x + r, c.y - 0.1 * size}),
                      {.width = size * 0.19, .color = color_of(advice), .round = true});
        break;
    case plan::Advice::modify:
        canvas.fill(Path()
                        .move({c.x, c.y - r})
                        .line({c.x + 0.8 * r, c.y})
                        .line({c.x, c.y + r})
                        .line({c.x - 0.8 * r, c.y})
                        .close(),
                    color_of(advice));
        break;
    }
}

Ink color_of(plan::Advice advice) {
    switch (advice) {
    case plan::Advice::hold:
        return ink::soft;
    case plan::Advice::migrate:
        return ink::migrate;
    case plan::Advice::modify:
        return ink::modify;
    }
    return ink::black;
}

std::string_view happening(plan::Zone zone) {
    switch (zone) {
    case plan::Zone::open:
        return reworded(to_word("2fo below fR1"));
    case plan::Zone::turning:
        return reworded(to_word("2fo passes fR1"));
    case plan::Zone::close:
        return reworded(to_word("2fo above fR1"));
    case plan::Zone::meeting:
        return reworded(to_word("fo meets fR1"));
    case plan::Zone::above:
        return reworded(to_word("fo above fR1"));
    }
    return "";
}

std::string_view meaning(plan::Advice advice) {
    switch (advice) {
    case plan::Advice::hold:
        return reworded(to_word("hold: nothing needed"));
    case plan::Advice::migrate:
        return reworded(to_word("migrate: keep the shape, the vowel drifts"));
    case plan::Advice::modify:
        return reworded(to_word("modify: change the shape"));
    }
    return "";
}

bool is_sure(plan::Decision const& decision) {
    constexpr double least = 0.75; // our choice: three draws of four agree
    return !(decision.certainty < least);
}

std::string brief_of(plan::Decision const& decision) {
    return is_sure(decision) ? decision.brief : decision.brief + " ?";
}

std::vector<std::string> wrapped(TextMeasurer const& measurer, std::string_view text, TextStyle const& style,
                                 double width) {
    std::vector<std::string> lines;
    std::string line;
    while (!text.empty()) {
        auto const end = std::min(text.find(' '), text.size());
        std::string const word(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (word.empty()) continue;
        auto const longer = line.empty() ? word : line + " " + word;
        if (!line.empty() && measurer.measure(longer, style).advance > width) {
            lines.push_back(line);
            line = word;
        } else {
            line = longer;
        }
    }
    if (!line.empty()) lines.push_back(line);
    return lines;
}

std::string fitted(TextMeasurer const& measurer, std::string_view text, TextStyle const& style,
                   double width) {
    if (measurer.measure(text, style).advance <= width) return std::string(text);
    std::vector<std::size_t> ends; // of each character
    for (auto rest = text; utf8::eat(rest);) ends.push_back(text.size() - rest.size());
    std::size_t low = 0, high = ends.size(); // the longest beginning that fits
    while (low < high) {
        auto const middle = (low + high + 1) / 2;
        bool const fits =
            measurer.measure(std::string(text.substr(0, ends[middle - 1])) + "…", style).advance <= width;
        if (fits)
            low = middle;
        else
            high = middle - 1;
    }
    if (low == 0) return {};
    auto const kept = text.substr(0, ends[low - 1]);
    auto const trimmed = kept.substr(0, kept.find_last_not_of(' ') + 1);
    return std::string(trimmed) + "…";
}

} // namespace vowelway::chart
