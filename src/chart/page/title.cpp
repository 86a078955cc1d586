// SPDX-License-Identifier: MIT
#include "chart/page/title.hpp"

#include "chart/page/marks.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace vowelway::chart {
namespace {

constexpr std::string_view caution =
    to_word("Comfort decides: never push, never chase a number. Hoarse or sore: "
            "stop, rest; if it lasts, see a doctor. "
            "A model, not medical advice.");

std::string measured(Singer const& singer) {
    if (singer.average) return std::string(reworded(average_voice_notice));
    auto text = worded("resonances: {0}", reworded(to_string(singer.provenance.method)));
    if (!singer.provenance.date.empty()) text += ", " + singer.provenance.date;
    return text;
}

/// Who sings, how, and where the numbers come from: on one line where they fit, else the name, and if need be
/// how, on a line of their own. Returns the last line written.
double draw_origin(Canvas& canvas, Head const& head, double width, double y) {
    auto const& m = canvas.measurer();
    auto const wide = [&m](std::string const& text, TextStyle const& style) {
        return m.measure(text, style).advance;
    };
    auto const who = bold(type::heading);
    auto const how = plain(type::body);
    auto const source = head.average ? bold(type::body, ink::modify) : plain(type::body);
    auto const joint = head.how.empty() || head.source.empty() ? std::string() : std::string("   ·   ");
    double const source_width = wide(head.source, source), how_width = wide(head.how + joint, how);
    double const room = width - source_width - how_width - 12;
    bool const beside = wide(head.who, who) <= room;
    canvas.write({0, y}, fitted(m, head.who, who, beside ? room : width), who);
    if (!beside) y += 13;
    bool const one_line = source_width + how_width <= width;
    double const how_y = y;
    if (!one_line) y += 13;
    canvas.write({width, y}, fitted(m, head.source, source, width), source, Align::right);
    canvas.write({one_line ? width - source_width : width, how_y},
                 one_line ? head.how + joint : fitted(m, head.how, how, width), how, Align::right);
    return y;
}

} // namespace

Head head_of(Singer const& singer, std::string_view technique) {
    return {.title = {},
            .aside = {},
            .who = singer.average ? singer.name
                                  : fmt::format("{}, {}", singer.name, reworded(to_string(singer.voice))),
            .how = worded("technique: {0}", technique),
            .source = measured(singer),
            .average = singer.average,
            .sentence = {}};
}

Head head_of(plan::Plan const& plan, std::string_view sentence) {
    auto head = head_of(plan.singer, plan.technique);
    head.title = plan.passage.title.empty() ? worded("Vowel plan {0}", plan.range.str()) : plan.passage.title;
    head.aside = plan.passage.composer;
    if (auto const told = transposition_of(plan.passage); !told.empty()) head.how += ", " + told;
    head.sentence = sentence;
    return head;
}

double draw_title(Canvas& canvas, Head const& head, double width) {
    auto const& m = canvas.measurer();
    double y = 17;
    auto const aside_style = slanted(type::body, ink::soft);
    auto const aside = fitted(m, head.aside, aside_style, width * 0.45);
    double const aside_width = m.measure(aside, aside_style).advance;
    double const title_width = m.measure(head.title, bold(type::title)).advance;
    bool const beside = aside.empty() || title_width + aside_width + 14 <= width;
    double const title_y = y;
    if (!beside) y += 13;
    canvas.write({width, y}, aside, aside_style, Align::right);
    canvas.write({0, title_y}, fitted(m, head.title, bold(type::title), width), bold(type::title));
    y = draw_origin(canvas, head, width, y + 18);
    y += 5;
    canvas.line({0, y}, {width, y}, {.width = 1.2, .color = ink::black});
    y += 3;
    for (auto const& line : wrapped(m, head.sentence, slanted(type::body), width)) {
        y += 11.5;
        canvas.write({0, y}, line, slanted(type::body));
    }
    return y + 8;
}

void draw_margins(Canvas& canvas, Head const& head, std::string_view what, Size paper, std::size_t page,
                  std::size_t pages) {
    auto const style = plain(type::small, ink::soft);
    double const right = paper.width - margin_side, width = right - margin_side, y = paper.height - 26;
    auto const& m = canvas.measurer();
    canvas.line({margin_side, y - 10}, {right, y - 10}, {.width = 0.4, .color = ink::rule});
    auto const number = fmt::format("{} / {}", page, pages);
    canvas.write({right, y}, number, style, Align::right);
    auto lines = wrapped(m, reworded(caution), style, width - 40);
    for (std::size_t i = 0; i < std::min<std::size_t>(lines.size(), 2); ++i)
        canvas.write({margin_side, y + 9.5 * static_cast<double>(i)}, lines[i], style);
    if (page == 1) {
        canvas.write({right, margin_top - 12}, what, style, Align::right);
        return;
    }
    double const title_width = m.measure(head.title, style).advance;
    double const room = std::max(width * 0.6, width - title_width - 12);
    auto who = head.average ? fmt::format("{} ({})", head.who, head.source) : head.who;
    if (m.measure(who, style).advance > room) who = fitted(m, head.who, style, room); // the source: page 1
    double const who_width = m.measure(who, style).advance;
    canvas.write({right, margin_top - 12}, who, style, Align::right);
    canvas.write({margin_side, margin_top - 12}, fitted(m, head.title, style, width - who_width - 12), style);
}

} // namespace vowelway::chart
